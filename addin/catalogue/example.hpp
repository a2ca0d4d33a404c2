/// \file example.hpp
/// A worked example of a function: a formula, the value that its source gives, and how near ours must be.
#pragma once

#include <string>
#include <vector>

namespace undercroft::addin {

/// Where the value of an example comes from.
enum class Origin {
    published,        ///< a printed figure, read or reproduced from the source named
    from_memory,      ///< recalled, and recomputed
    mathematics,      ///< a closed form or an identity
    common_practice,  ///< a fact of the trade that has no published source
};

struct Example {
    std::string formula;    ///< as typed in a sheet
    std::string value;      ///< the number or text that is published
    std::string tolerance;  ///< "0.005", "1e-9 rel", "0.5 %" or "exact"
    Origin origin = Origin::mathematics;
    std::string source;
};

/// A published table that examples use by its name.
struct ExampleTable {
    std::string name;
    std::string title;
    std::vector<std::vector<std::string>> rows;  ///< the first holds the units
};

/// `published`, `from memory`, `mathematics`, `common practice`
[[nodiscard]] std::string_view origin_text(Origin origin);

}  // namespace undercroft::addin
