#include "cli/output_file.hpp"

#include <doctest/doctest.h>

#include <filesystem>

#include "tests/store/temporary_folder.hpp"

namespace evenclaw::cli {
namespace {

std::string slug_of(const Outcome& outcome) {
  return outcome ? "" : outcome.faults().front().slug;
}

}  // namespace

TEST_CASE("A page is made with the folder it belongs in, and made again") {
  const TemporaryFolder folder;
  const std::string path = folder.file("sheets/home.html");
  REQUIRE(write_page(path, PageForm::html, "<p>first</p>\n").ok());
  REQUIRE(write_page(path, PageForm::html, "<p>second</p>\n").ok());
  CHECK(bytes_of(path).find("<p>second</p>\n") == 0);
  CHECK_FALSE(std::filesystem::exists(path + ".part"));
}

TEST_CASE("The ending of a name says whether a page is a PDF") {
  CHECK(form_of("sheets/home.pdf") == PageForm::pdf);
  CHECK(form_of("HOME.PDF") == PageForm::pdf);
  CHECK(form_of("home.html") == PageForm::html);
  CHECK(form_of("pdf") == PageForm::html);
  CHECK(form_of("") == PageForm::html);
  CHECK(named_for(PageForm::pdf, "2026-11-24-home.html") == "2026-11-24-home.pdf");
  CHECK(named_for(PageForm::html, "2026-11-24-home.html") == "2026-11-24-home.html");
}

TEST_CASE("A PDF of ours is made again, one of somebody else and a page of ours are not replaced") {
  const TemporaryFolder folder;
  const std::string path = folder.file("home.pdf");
  REQUIRE(write_page(path, PageForm::pdf, "%PDF-1.5 first\n").ok());
  REQUIRE(write_page(path, PageForm::pdf, "%PDF-1.5 second\n").ok());
  CHECK(bytes_of(path).find("second") != std::string::npos);
  write_bytes(folder.file("bill.pdf"), "%PDF-1.4 a bill\n");
  CHECK(slug_of(write_page(folder.file("bill.pdf"), PageForm::pdf, "%PDF-1.5\n")) ==
        "output-exists");
  REQUIRE(write_page(folder.file("page"), PageForm::html, "<p>sheet</p>\n").ok());
  CHECK(slug_of(write_page(folder.file("page"), PageForm::pdf, "%PDF-1.5\n")) == "output-exists");
}

TEST_CASE("A page of somebody else is never replaced") {
  const TemporaryFolder folder;
  write_bytes(folder.file("index.html"), "<p>mine</p>\n");
  CHECK(slug_of(write_page(folder.file("index.html"), PageForm::html, "<p>sheet</p>\n")) ==
        "output-exists");
  CHECK(bytes_of(folder.file("index.html")) == "<p>mine</p>\n");
}

TEST_CASE("A new file is never written over an old one") {
  const TemporaryFolder folder;
  REQUIRE(write_new_file(folder.file("all.jsonl"), "one\n").ok());
  CHECK(slug_of(write_new_file(folder.file("all.jsonl"), "two\n")) == "output-exists");
  CHECK(bytes_of(folder.file("all.jsonl")) == "one\n");
}

TEST_CASE("A file in a place that cannot be a folder is refused and nothing is left there") {
  const TemporaryFolder folder;
  write_bytes(folder.file("file"), "");
  CHECK(slug_of(write_new_file(folder.file("file/all.jsonl"), "one\n")) == "file-not-found");
}

TEST_CASE("Pages lie in a folder beside the records") {
  CHECK(beside("/data/evenclaw.db", "home.html") == "/data/sheets/home.html");
  CHECK(beside("evenclaw.db", "home.html") == "sheets/home.html");
}

}  // namespace evenclaw::cli
