// A layout file becomes a Design.
#pragma once

#include "design/design.h"
#include "source/document.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace dyeleaf {

// Text styles by name.
using Styles = std::map<std::string, TextStyle>;

// The styles under a `styles:` key, each free to build on `shared` and on those above it, together with `shared`.
Styles read_styles(const Node& node, const Styles& shared, const std::vector<std::string>& families,
                   Diagnostics& diagnostics);

// A file that holds nothing but `styles:`; layouts name it in `styles from:`.
Styles read_style_file(const Node& node, const std::vector<std::string>& families, Diagnostics& diagnostics);

// The name under `styles from:`, or nothing.
std::optional<Sourced<std::string>> shared_styles_name(const Node& node);

// The design, or nothing and errors, each at its place: unknown keys, unknown facts (with the nearest that can be
// placed there), a fact of the wrong kind, unknown styles and families, a jar layout without its cautions, a hole
// outside the label. `shared` are the styles that the file may build upon; `families` the fonts there are. Pictures lie
// in the folder of the file, or in one of `also`.
std::optional<Design> read_design(const Node& node, const Styles& shared, const std::vector<std::string>& families,
                                  Diagnostics& diagnostics, const std::vector<std::filesystem::path>& also = {});

} // namespace dyeleaf
