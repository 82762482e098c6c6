// What the invented business comes to beside what was published: a page and its drawings.
#pragma once

#include <string>
#include <vector>

namespace evenclaw {

struct DemoFigures {
  std::string page;  // docs/method/demo-figures.md

  struct Plot {
    std::string name;  // "lesions": docs/method/demo-figures-lesions.svg
    std::string svg;
  };

  std::vector<Plot> plots;
  bool all_within = false;  // every figure that has a published range lies in it
};

/// Of 12 herds over 3 years with the seed 1.
DemoFigures demo_figures();

}  // namespace evenclaw
