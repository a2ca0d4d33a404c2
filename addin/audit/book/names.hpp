/// \file names.hpp
/// The defined names of a workbook, each read once, and the cells that a reference stands for.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "addin/formula/formula.hpp"

namespace undercroft::audit {

struct NameMeaning {
    const DefinedName* defined = nullptr;
    addin::Node tree;
    bool readable = false;  ///< false: `tree` means nothing
};

class Names {
public:
    explicit Names(const Book& book);

    /// What a name means on a sheet; its own names come first. nullptr when it is not defined.
    [[nodiscard]] const NameMeaning* find(std::string_view name, std::int32_t sheet) const;

private:
    std::map<std::pair<std::int32_t, std::string>, NameMeaning> meanings_;
};

/// The cells of a reference that was read in a formula at `base`, as they are for the same formula at `at`.
/// One area a sheet; empty for another file, a sheet that is not there, or cells beyond the sheet's edge.
[[nodiscard]] std::vector<Area> areas_of(const Book& book, const addin::CellReference& reference,
                                         const Spot& base, const Spot& at);

/// The same where it is one area, which it nearly always is.
[[nodiscard]] std::optional<Area> area_of(const Book& book, const addin::CellReference& reference,
                                          const Spot& base, const Spot& at);

}  // namespace undercroft::audit
