#include "core/exchange/finding_scheme.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

/// "lesion A=DD, foot 1=LH", or what is wrong.
std::string told(const Result<FindingScheme>& scheme) {
  std::string all;
  if (!scheme) {
    for (const Fault& fault : scheme.faults()) {
      CHECK(fault.slug == "usage");
      CHECK_FALSE(fault.remedy.empty());
      all += (all.empty() ? "" : ", ") + fault.message;
    }
    return all;
  }
  if (scheme->icar) all = *scheme->icar ? "icar" : "not icar";
  for (const WordSaid& said : scheme->words) {
    all += (all.empty() ? "" : ", ") + std::string(word_of(said.column)) + ' ' + said.word + '=' +
           said.means;
  }
  return all;
}

}  // namespace

TEST_CASE("lesions are said to be atlas codes, word by word, or both") {
  CHECK(told(lesions_said("icar")) == "icar");
  CHECK(told(lesions_said("A=DD, B = sole ulcer, Klauenfäule=HHE,X=ignore")) ==
        "lesion A=DD, lesion B=SU, lesion Klauenfäule=HHE, lesion X=ignore");
  CHECK(told(lesions_said("ICAR, X=Ignore")) == "icar, lesion X=ignore");
  CHECK(told(lesions_said("not icar")) == "not icar");
  CHECK(told(lesions_said("")).empty());
}

TEST_CASE("a word may hold a comma where semicolons part them, and a sign of equality") {
  CHECK(told(lesions_said("Sohle, außen=SU; a=b=DD")) == "lesion Sohle, außen=SU, lesion a=b=DD");
}

TEST_CASE("a part that says nothing and a lesion nobody knows are told, each of them") {
  CHECK(told(lesions_said("A, B=, C=abscess, D=DD")) ==
        "\"A\" does not say what a word means, \"B=\" does not say what a word means, "
        "\"abscess\" is no lesion that is known");
}

TEST_CASE("the words of other columns are said with the column") {
  CHECK(told(words_said("foot:1=LH outside, degree:2=plain, stage:II=M2, place:4=zone 4")) ==
        "foot 1=LH outside, degree 2=plain, stage II=M2, place 4=zone 4");
  CHECK(told(words_said("degree:0=ignore, claw:x=not called")) ==
        "degree 0=ignore, claw x=not called");
  CHECK(told(words_said("1=LH, lesion:A=DD, foot:1=bad")) ==
        "\"1=LH\" does not say what a word means, \"lesion:A=DD\" does not say what a word means, "
        "\"bad\" is no foot that is known");
}

TEST_CASE("what was said before stays, and the last word of a word holds") {
  const FindingScheme before = lesions_said("icar, A=DD, B=SU").value();
  const FindingScheme now = with_words_said(before, lesions_said("not icar, B=TU").value());
  CHECK(told(now) == "not icar, lesion A=DD, lesion B=TU");
  CHECK(with_words_said(now, {}) == now);
  CHECK(told(with_words_said(before, words_said("foot:A=LH").value())) ==
        "icar, foot A=LH, lesion A=DD, lesion B=SU");
}

TEST_CASE("letter case parts two words of a list") {
  CHECK(told(with_words_said(lesions_said("d=DD").value(), lesions_said("D=DS").value())) ==
        "lesion D=DS, lesion d=DD");
}

TEST_CASE("whether lesions are told at all, and how") {
  CHECK_FALSE(tells_lesions({}));
  CHECK_FALSE(tells_lesions(words_said("foot:1=LH").value()));
  CHECK_FALSE(tells_lesions(lesions_said("not icar").value()));
  CHECK(tells_lesions(lesions_said("icar").value()));
  CHECK(tells_lesions(lesions_said("A=ignore").value()));
  CHECK(kind_of(lesions_said("icar").value()) == LesionScheme::icar);
  CHECK(kind_of(lesions_said("A=DD").value()) == LesionScheme::word_by_word);
  CHECK(kind_of(lesions_said("icar, A=DD").value()) == LesionScheme::icar_and_word_by_word);
}
