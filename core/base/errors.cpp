#include "core/base/errors.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view nothing_changed =
    "Nothing was written; all that was saved is as before.";
constexpr std::string_view entry_kept = "The entry is kept exactly as it came; nothing is dropped.";

// Sorted by what a person was doing: calling out, visits and herds, dates, files, disk, the log,
// the command line.
constexpr ErrorKind error_table[] = {
    {"call-not-understood", "A word of the called line is not known or stands where it cannot.",
     "Everything said before it is kept; nothing of this line was taken.",
     "Correct the word the message points at and give the line again."},
    {"call-impossible", "Each word is known, but together they describe something that cannot be.",
     "Everything said before it is kept; nothing of this line was taken.",
     "Look at the foot again and call what is there."},
    {"line-too-long", "One line is longer than any line that is called out.", nothing_changed,
     "Break the line in two, or check that the file really holds called lines."},
    {"nothing-to-do", "The input holds no line to record.", nothing_changed,
     "Give at least one line that starts with a cow."},
    {"answer-needed", "A question has to be answered by a person before this can go on.",
     nothing_changed, "Answer the question, or say what is to happen with the option it names."},

    {"no-visit-open", "No visit is open, so there is no day the line could belong to.",
     nothing_changed, "Start a visit to the herd first."},
    {"two-visits-open", "More than one visit is open, so it is not clear which one is meant.",
     nothing_changed, "Name the herd, or end the visit that is over."},
    {"visit-day-taken", "That herd has a visit on that day already, and two are not made into one.",
     nothing_changed,
     "Look at both; put the other one's day right first when that is the wrong one."},
    {"visit-not-found", "There is no visit of that herd on that day.", nothing_changed,
     "Look at the list of visits and name one of them."},
    {"herd-not-found", "No herd has that name.", nothing_changed,
     "Check the spelling against the list of herds, or start a first visit to the new herd."},
    {"herd-ambiguous", "Several herds fit that name.", nothing_changed,
     "Write more of the name, so that only one herd fits."},
    {"cow-not-found", "No cow of this herd carries that number.", nothing_changed,
     "Check the number; a cow is known from the first time she was recorded."},
    {"tag-unreadable", "That is not the number of an official ear tag.", nothing_changed,
     "Read the tag again; write the letters of the country and all digits behind them."},
    {"list-unreadable", "A line of a list holds something that cannot be taken over.",
     "What is named was not taken over; the rest of the list was.",
     "Mend the lines that are named and read the list again; what was taken over stays as it is."},
    {"list-refused", "A list of cows holds something for which nothing of it is taken over.",
     nothing_changed, "Mend what is named and read the list again."},
    {"electronic-number-unreadable", "That is not a number an electronic ear tag can hold.",
     nothing_changed, "Read her again and write the 15 digits the reader shows."},
    {"person-not-found", "No person is known by that name or id.", nothing_changed,
     "Check the spelling, or enter the person first."},
    {"product-not-found", "No product of that name stands on the herd's list.", nothing_changed,
     "Check the spelling: evenclaw product HERD list."},

    {"date-unreadable", "That is not a date.", nothing_changed,
     "Write the date as year-month-day, such as 2026-11-24."},
    {"date-in-future", "The date lies after today.", nothing_changed,
     "Check the year and the month, and the clock of this device."},

    {"file-not-found", "There is no file of that name.", nothing_changed,
     "Check the name and the folder."},
    {"file-unreadable", "The file is there but cannot be read.", nothing_changed,
     "Check who may read it and whether its disk is connected."},
    {"file-too-large", "The file is larger than anything that is read in one go.", nothing_changed,
     "Check that it is the right file; split it if it is."},
    {"file-read-only", "The file may be read but not written.",
     "Everything saved before stays readable; the new lines were not saved.",
     "Allow writing to the file and its folder, or use a file elsewhere."},
    {"file-damaged", "The file is ours, but part of it cannot be read any more.",
     "The file was not changed; what can be read still is.",
     "Keep a copy of the file, then restore the latest backup."},
    {"file-newer", "The file was written by a newer version of this program.",
     "The file was not changed.", "Update this program and open the file again."},
    {"not-our-file", "The file was not written by this program.", "The file was not changed.",
     "Check the name; to start a new file, name one that does not exist yet."},
    {"output-exists", "A file of that name is already there.", "The file was not changed.",
     "Choose another name, or say that it may be replaced."},

    {"disk-full", "There is no room left on the disk.",
     "All that was reported as saved is saved; the lines after it are not.",
     "Free some room and give the lines that were not reported as saved again."},
    {"disk-failed", "The disk refused to read or write.",
     "All that was reported as saved had reached the disk before.",
     "Copy the file to another disk, then check it."},
    {"print-failed", "The page to be printed could not be made.", nothing_changed,
     "Make the page as HTML and print it from a browser."},
    {"store-busy", "Another program is writing to the same file.",
     "All that was reported as saved is saved; this was not.",
     "Wait until the other one has finished and try again."},

    {"json-unreadable", "The text is not the JSON that is expected here.", nothing_changed,
     "Check the text at the place the message names."},
    {"row-unreadable", "A stored row does not fit its table.",
     "The log is untouched; rows can always be made anew from it.",
     "Check the file, which makes its rows anew."},
    {"rows-out-of-date",
     "The rows were made by another version of this program, or not to their end.",
     "The log is untouched; rows can always be made anew from it.",
     "Open the file where it can be written to, which makes them anew."},
    {"entry-not-canonical", "An entry is not written in the one form every device agrees on.",
     entry_kept, "Send the entry again from the device that made it."},
    {"entry-digest-wrong", "An entry does not have the contents its digest was made of.",
     entry_kept, "Fetch the entry again from a device that still has it whole."},
    {"entry-set-aside", "An entry was received but does not count yet.", entry_kept,
     "Read the reason beside the entry and settle it; then it counts."},

    {"selection-impossible", "Rows were asked for that no table holds.",
     "The log and its rows are untouched.",
     "Ask only for tables and columns that the data dictionary names."},
    {"usage", "The command was not given in a way that can be carried out.", nothing_changed,
     "Read the example in the message or ask the command for help."},
};

}  // namespace

std::span<const ErrorKind> all_errors() {
  return error_table;
}

const ErrorKind* find_error(std::string_view slug) {
  for (const ErrorKind& kind : error_table) {
    if (kind.slug == slug) return &kind;
  }
  return nullptr;
}

}  // namespace evenclaw
