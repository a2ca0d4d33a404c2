/// \file limit_words.hpp
/// Which side of a comparison is the limit, by what its cells are called.
#pragma once

#include <optional>
#include <string>

#include "addin/audit/findings/audited_book.hpp"
#include "addin/audit/findings/words.hpp"

namespace undercroft::audit {

class LimitWords {
public:
    LimitWords(const AuditedBook& audited, const FormulaGroup& group, const Spot& at)
        : audited_(audited), group_(group), at_(at) {}

    /// What is wrong where a check passes while `small` is not above `large`: "it passes where the required
    /// (B8) is not more ...". Empty where the labels say nothing, or agree.
    [[nodiscard]] std::string turned(const addin::Node& small, const addin::Node& large) const;

private:
    enum class Bound {
        none,
        upper,  ///< what must not be exceeded, or what there is: allowed, provided
        lower,  ///< what must be reached: required, least
    };
    struct Side {
        std::optional<Spot> cell;
        Words words;
        Bound bound = Bound::none;
    };
    [[nodiscard]] Side side_of(const addin::Node& node) const;
    [[nodiscard]] Bound ratio_of(const addin::Node& node) const;
    [[nodiscard]] std::optional<Spot> cell_of(const addin::Node& node, const Spot& base,
                                              const Spot& at) const;
    [[nodiscard]] static Bound bound_of(const Words& words);

    const AuditedBook& audited_;
    const FormulaGroup& group_;
    Spot at_;
};

}  // namespace undercroft::audit
