// Animals and what happened to them, read from ICAR ADE JSON.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/exchange/herd_columns.hpp"
#include "core/exchange/herd_record.hpp"

namespace evenclaw {

struct AdeHerd {
  std::vector<ColumnRead> types;  // each type of resource, what it is read as, how many in `sample`
  std::vector<HerdRecord> records;  // `line` is which object of the file it was, from 1
  Faults left_out;
  int objects = 0;
};

/// Whether a text is JSON and no table: its first character says.
bool looks_like_json(std::string_view text);

/// One resource, an array of them, or an object whose `member` holds them. Read are animals
/// (icarAnimalCoreResource) and the events parturition, dry off, departure, death and arrival;
/// other types are passed over and told in `types`. Required, and left out with what is missing
/// else: resourceType, meta.source and meta.modified; of an animal identifier, specie and gender;
/// of an event animal and eventDateTime. Left out too: no cattle, males, what is marked as deleted,
/// an animal without ear tag, electronic number or managementTag, and whatever faults_of_record()
/// finds. An animal's identifiers are read by what they are, whatever their scheme: 15 digits that
/// fit ISO 11784 are an electronic number, letters of a country and digits an ear tag. An event
/// means the animal of the same file with the same identifier, else the cow by what the identifier
/// is. The day is that of eventDateTime as it is written: its time zone is not known here.
/// damParity is taken for the number of the lactation the calving began (from memory; the schema
/// does not say whether it counts this calving). Fault "json-unreadable" with line and column, and
/// then nothing is read; "list-unreadable" when it holds no resource.
Result<AdeHerd> ade_herd(std::string_view text, Day today);

}  // namespace evenclaw
