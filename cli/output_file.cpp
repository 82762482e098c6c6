#include "cli/output_file.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>

#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

namespace fs = std::filesystem;

Fault fault_of_errno(const std::string& path, int error) {
  std::string slug = "disk-failed";
  if (error == ENOSPC || error == EDQUOT || error == EFBIG) slug = "disk-full";
  if (error == EACCES || error == EROFS || error == EPERM) slug = "file-read-only";
  if (error == ENOENT || error == ENOTDIR) slug = "file-not-found";
  return {slug, path + " cannot be written: " + std::strerror(error), path, 0, 0, ""};
}

// Stands behind the end of the page, where every reader passes over it.
std::string_view mark_of(PageForm form) {
  switch (form) {
    case PageForm::html:
      return "<!-- Made by Evenclaw, which may replace it. -->\n";
    case PageForm::pdf:
      return "% Made by Evenclaw, which may replace it.\n";
  }
  return {};
}

bool is_page_of_ours(const std::string& path, std::string_view mark) {
  std::ifstream stream(path, std::ios::binary | std::ios::ate);
  const auto size = static_cast<std::streamoff>(mark.size());
  if (!stream || stream.tellg() < size) return false;
  stream.seekg(-size, std::ios::end);
  std::string tail(mark.size(), '\0');
  stream.read(tail.data(), size);
  return stream.gcount() == size && tail == mark;
}

/// Everything, durable, into a file nobody else has open; errno's value on failure.
int write_all(const std::string& path, std::string_view content) {
  const int file = open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
  if (file < 0) return errno;
  int error = 0;
  while (!content.empty() && error == 0) {
    const ssize_t written = write(file, content.data(), content.size());
    if (written < 0) {
      error = errno == EINTR ? 0 : errno;
    } else {
      content.remove_prefix(static_cast<std::size_t>(written));
    }
  }
  if (error == 0 && fsync(file) != 0) error = errno;
  if (close(file) != 0 && error == 0) error = errno;
  return error;
}

/// Beside the target and then renamed; what is there is replaced.
Outcome put(const std::string& path, std::string_view content) {
  const fs::path folder = fs::path(path).parent_path();
  std::error_code ignored;
  if (!folder.empty()) fs::create_directories(folder, ignored);
  const std::string beside_it = path + ".part";
  int error = write_all(beside_it, content);
  if (error == 0 && rename(beside_it.c_str(), path.c_str()) != 0) error = errno;
  if (error == 0) return Done{};
  unlink(beside_it.c_str());
  return fault_of_errno(path, error);
}

bool is_there(const std::string& path) {
  std::error_code ignored;
  return fs::exists(path, ignored);
}

}  // namespace

Outcome write_new_file(const std::string& path, std::string_view content) {
  if (!is_there(path)) return put(path, content);
  return Fault{"output-exists", path + " is there already", path, 0, 0, "Choose another name."};
}

PageForm form_of(const std::string& path) {
  return fold_case(fs::path(path).extension().string()) == ".pdf" ? PageForm::pdf : PageForm::html;
}

Outcome write_page(const std::string& path, PageForm form, std::string_view page) {
  const std::string_view mark = mark_of(form);
  if (!is_there(path) || is_page_of_ours(path, mark)) {
    return put(path, std::string(page) + std::string(mark));
  }
  return Fault{"output-exists",       path + " is there already and no page of ours", path, 0, 0,
               "Choose another name."};
}

std::string named_for(PageForm form, const std::string& name) {
  switch (form) {
    case PageForm::html:
      return fs::path(name).replace_extension(".html").string();
    case PageForm::pdf:
      return fs::path(name).replace_extension(".pdf").string();
  }
  return name;
}

std::string beside(const std::string& records_file, const std::string& name) {
  return (fs::path(records_file).parent_path() / "sheets" / name).string();
}

}  // namespace evenclaw::cli
