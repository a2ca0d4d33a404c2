#include "addin/audit/book/common_subsequence.hpp"

#include <algorithm>
#include <cstdint>
#include <span>
#include <string_view>
#include <unordered_map>

namespace undercroft::audit {

namespace {

constexpr std::size_t most_compared = 16000000;

using Pairs = std::vector<std::pair<std::size_t, std::size_t>>;
using Words = std::span<const std::uint32_t>;

/// Equal texts as equal numbers, which are quicker to compare.
class Numbers {
public:
    std::vector<std::uint32_t> of(const std::vector<std::string>& texts) {
        std::vector<std::uint32_t> numbers;
        numbers.reserve(texts.size());
        for (const std::string& text : texts)
            numbers.push_back(
                known_.try_emplace(text, static_cast<std::uint32_t>(known_.size())).first->second);
        return numbers;
    }

private:
    std::unordered_map<std::string_view, std::uint32_t> known_;
};

/// Where the path of the longest common subsequence of `a` and `b` comes to the row `middle` of `a`. The path
/// goes from the beginning to the end: over both where they are alike, else over the one behind which more is
/// to come, over `a` where it is the same.
std::size_t crossing(Words a, Words b, std::size_t middle) {
    std::vector<std::uint32_t> length(b.size() + 1);  // to come behind each place of b
    std::vector<std::uint32_t> length_below(b.size() + 1);
    std::vector<std::uint32_t> crossed(b.size() + 1);  // where the path from there comes to the middle
    std::vector<std::uint32_t> crossed_below(b.size() + 1);
    for (std::size_t i = a.size(); i-- > 0;) {
        length.swap(length_below);
        crossed.swap(crossed_below);
        length[b.size()] = 0;
        crossed[b.size()] = static_cast<std::uint32_t>(b.size());
        for (std::size_t j = b.size(); j-- > 0;) {
            const bool alike = a[i] == b[j];
            const bool over_a = length_below[j] >= length[j + 1];
            length[j] = alike ? length_below[j + 1] + 1 : over_a ? length_below[j] : length[j + 1];
            crossed[j] = alike ? crossed_below[j + 1] : over_a ? crossed_below[j] : crossed[j + 1];
        }
        if (i == middle)
            for (std::size_t j = 0; j <= b.size(); ++j) crossed[j] = static_cast<std::uint32_t>(j);
    }
    return crossed[0];
}

/// Adds the pairs of `a` and `b`, which begin at these places of the whole lists.
void add_pairs(Words a, Words b, std::size_t a_begin, std::size_t b_begin, Pairs& pairs) {
    if (a.empty() || b.empty()) return;
    if (a.size() == 1) {
        const auto found = std::find(b.begin(), b.end(), a.front());
        if (found != b.end())
            pairs.emplace_back(a_begin, b_begin + static_cast<std::size_t>(found - b.begin()));
        return;
    }
    const std::size_t middle = a.size() / 2;
    const std::size_t at = crossing(a, b, middle);
    add_pairs(a.first(middle), b.first(at), a_begin, b_begin, pairs);
    add_pairs(a.subspan(middle), b.subspan(at), a_begin + middle, b_begin + at, pairs);
}

}  // namespace

Pairs common_subsequence(const std::vector<std::string>& a, const std::vector<std::string>& b) {
    Pairs pairs;
    const std::size_t shorter = std::min(a.size(), b.size());
    std::size_t head = 0;
    while (head < shorter && a[head] == b[head]) {
        pairs.emplace_back(head, head);
        ++head;
    }
    std::size_t tail = 0;
    while (tail < shorter - head && a[a.size() - 1 - tail] == b[b.size() - 1 - tail]) ++tail;
    const std::size_t n = a.size() - head - tail;
    const std::size_t m = b.size() - head - tail;
    if (n * m > most_compared) {
        for (std::size_t i = head; i < head + std::min(n, m); ++i)
            if (a[i] == b[i]) pairs.emplace_back(i, i);
    } else {
        Numbers numbers;
        const std::vector<std::uint32_t> a_numbers = numbers.of(a);
        const std::vector<std::uint32_t> b_numbers = numbers.of(b);
        add_pairs(Words(a_numbers).subspan(head, n), Words(b_numbers).subspan(head, m), head, head, pairs);
    }
    for (std::size_t i = tail; i-- > 0;) pairs.emplace_back(a.size() - 1 - i, b.size() - 1 - i);
    return pairs;
}

}  // namespace undercroft::audit
