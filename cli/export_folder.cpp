#include "cli/export_folder.hpp"

#include <algorithm>
#include <filesystem>
#include <set>
#include <string_view>
#include <system_error>

#include "cli/output_file.hpp"
#include "core/api/herd_export.hpp"
#include "core/api/task_calendar.hpp"
#include "core/api/transfer.hpp"

namespace evenclaw::cli {
namespace {

namespace fs = std::filesystem;

/// Letters and digits of a herd's name, the rest as single hyphens.
std::string plain_name(const std::string& name) {
  std::string plain;
  for (const char c : name) {
    const bool is_plain =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    if (is_plain) {
      plain += c;
    } else if (!plain.empty() && plain.back() != '-') {
      plain += '-';
    }
  }
  while (!plain.empty() && plain.back() == '-') plain.pop_back();
  return plain.empty() ? "herd" : plain;
}

class ExportFolder {
 public:
  ExportFolder(const Ports& ports, std::string folder)
      : ports_(ports), folder_(std::move(folder)) {}

  Outcome put(const std::string& name, std::string_view content) {
    const Outcome written = write_new_file((fs::path(folder_) / name).string(), content);
    if (written) made_.files.push_back(name);
    return written;
  }

  Outcome put_tables(std::optional<HerdId> herd) {
    const Outcome tables =
        export_tables(ports_.store, herd, [&](std::string_view name, const std::string& csv) {
          made_.rows += std::count(csv.begin(), csv.end(), '\n') - 1;
          return put("tables/" + std::string(name) + ".csv", csv);
        });
    return tables ? put("data-dictionary.csv", data_dictionary_csv()) : tables;
  }

  Outcome put_people() {
    const auto people = export_people(ports_.directory);
    return people ? put("tables/person.csv", *people) : Outcome(people.faults());
  }

  Outcome put_log() {
    std::string log;
    const auto given = give_out(ports_.store, [&](std::string_view line) -> Outcome {
      log.append(line);
      log.push_back('\n');
      return Done{};
    });
    if (!given) return given.faults();
    if (!given->damaged.empty()) return given->damaged;
    made_.entries = given->entries;
    return put("log.jsonl", log);
  }

  Outcome put_herd(const Herd& herd, Day today) {
    const std::string name = free_name(plain_name(herd.name));
    const auto ade = export_ade(ports_.store, herd.herd, ports_.clock.now());
    if (!ade) return ade.faults();
    const auto calendar = task_calendar(ports_, herd, std::nullopt, today);
    if (!calendar) return calendar.faults();
    const Outcome written = put("ade/" + name + ".json", *ade);
    return written ? put("calendar/" + name + ".ics", calendar->file) : written;
  }

  Exported take() && { return std::move(made_); }

 private:
  /// Two herds may be called alike but for signs that no file name holds.
  std::string free_name(const std::string& wanted) {
    std::string name = wanted;
    for (int number = 2; !names_.insert(name).second; ++number) {
      name = wanted + '-' + std::to_string(number);
    }
    return name;
  }

  Ports ports_;
  std::string folder_;
  std::set<std::string> names_;
  Exported made_;
};

Outcome fill(ExportFolder& folder, const Ports& ports, const std::optional<Herd>& herd, Day today) {
  Outcome done = folder.put_tables(herd ? std::optional(herd->herd) : std::nullopt);
  if (done && !herd) done = folder.put_people();
  if (done && !herd) done = folder.put_log();
  if (herd) return done ? folder.put_herd(*herd, today) : done;
  const auto herds = all_herds(ports.store);
  if (!herds) return herds.faults();
  for (const Herd& one : *herds) {
    if (done) done = folder.put_herd(one, today);
  }
  return done;
}

Fault is_there_already(const std::string& path) {
  return {.slug = "output-exists",
          .message = path + " is there already",
          .token = path,
          .remedy = "Choose another name, or remove it if an export broke off there."};
}

std::string without_slash(std::string path) {
  while (path.size() > 1 && path.back() == '/') path.pop_back();
  return path;
}

}  // namespace

Result<Exported> export_into(const Ports& ports, const std::optional<Herd>& herd, Day today,
                             const std::string& wanted) {
  const std::string folder = without_slash(wanted);
  const std::string beside = folder + ".part";
  std::error_code failed;
  for (const std::string& path : {folder, beside}) {
    if (fs::exists(path, failed)) return is_there_already(path);
  }
  ExportFolder into(ports, beside);
  const Outcome filled = fill(into, ports, herd, today);
  if (filled) {
    fs::rename(beside, folder, failed);
    if (!failed) {
      Exported made = std::move(into).take();
      made.folder = folder;
      return made;
    }
  }
  std::error_code ignored;
  fs::remove_all(beside, ignored);
  if (!filled) return filled.faults();
  return Fault{.slug = "disk-failed",
               .message = folder + " cannot be written: " + failed.message(),
               .token = folder};
}

}  // namespace evenclaw::cli
