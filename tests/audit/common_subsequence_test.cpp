// What two lists have in common, held against the whole table.
#include <random>

#include "addin/audit/book/common_subsequence.hpp"
#include "tests/support/catch.hpp"

namespace undercroft::tests {

namespace {

using audit::common_subsequence;
using Pairs = std::vector<std::pair<std::size_t, std::size_t>>;
using Texts = std::vector<std::string>;

/// By the table of all lengths, which is easy to see through and takes memory for every pair.
Pairs by_table(const Texts& a, const Texts& b) {
    std::vector<std::vector<int>> length(a.size() + 1, std::vector<int>(b.size() + 1));
    for (std::size_t i = a.size(); i-- > 0;)
        for (std::size_t j = b.size(); j-- > 0;)
            length[i][j] =
                a[i] == b[j] ? length[i + 1][j + 1] + 1 : std::max(length[i + 1][j], length[i][j + 1]);
    Pairs pairs;
    for (std::size_t i = 0, j = 0; i < a.size() && j < b.size();) {
        if (a[i] == b[j])
            pairs.emplace_back(i++, j++);
        else if (length[i + 1][j] >= length[i][j + 1])
            ++i;
        else
            ++j;
    }
    return pairs;
}

Texts letters(const std::string& text) {
    Texts list;
    for (const char c : text) list.emplace_back(1, c);
    return list;
}

}  // namespace

TEST_CASE("the longest common subsequence of small lists") {
    CHECK(common_subsequence({}, {}).empty());
    CHECK(common_subsequence(letters("abc"), {}).empty());
    CHECK(common_subsequence({}, letters("abc")).empty());
    CHECK(common_subsequence(letters("abc"), letters("xyz")).empty());
    CHECK(common_subsequence(letters("abc"), letters("abc")) == Pairs{{0, 0}, {1, 1}, {2, 2}});
    CHECK(common_subsequence(letters("ac"), letters("abc")) == Pairs{{0, 0}, {1, 2}});
    CHECK(common_subsequence(letters("abcbdab"), letters("bdcaba")).size() == 4);  // Cormen et al., 15.4
    CHECK(common_subsequence(letters("ab"), letters("ba")) == Pairs{{1, 0}});      // a is passed over first
}

TEST_CASE("the same pairs as by the whole table, in lists of few and of many texts") {
    std::mt19937 engine(20261127);
    for (const unsigned kinds : {2U, 3U, 8U, 40U}) {
        for (int round = 0; round < 300; ++round) {
            const auto list = [&] {
                Texts made(engine() % 40);
                for (std::string& text : made) text = std::to_string(engine() % kinds);
                return made;
            };
            const Texts a = list();
            const Texts b = list();
            CAPTURE(kinds, round);
            // What both begin and end with is taken first.
            const Pairs found = common_subsequence(a, b);
            std::size_t head = 0;
            while (head < std::min(a.size(), b.size()) && a[head] == b[head]) ++head;
            std::size_t tail = 0;
            while (tail < std::min(a.size(), b.size()) - head &&
                   a[a.size() - 1 - tail] == b[b.size() - 1 - tail])
                ++tail;
            Pairs expected;
            for (std::size_t i = 0; i < head; ++i) expected.emplace_back(i, i);
            const auto middle = [&](const Texts& whole) {
                return Texts(whole.begin() + static_cast<std::ptrdiff_t>(head),
                             whole.end() - static_cast<std::ptrdiff_t>(tail));
            };
            for (const auto& [i, j] : by_table(middle(a), middle(b)))
                expected.emplace_back(i + head, j + head);
            for (std::size_t i = tail; i-- > 0;) expected.emplace_back(a.size() - 1 - i, b.size() - 1 - i);
            CHECK(found == expected);
            CHECK(found.size() == by_table(a, b).size());
        }
    }
}

TEST_CASE("lists too different to be compared are paired place by place") {
    Texts a(5001);
    Texts b(5001);
    for (std::size_t i = 0; i < a.size(); ++i) {
        a[i] = "a" + std::to_string(i);
        b[i] = i % 1000 == 500 ? a[i] : "b" + std::to_string(i);
    }
    const Pairs pairs = common_subsequence(a, b);
    REQUIRE(pairs.size() == 5);
    for (const auto& [i, j] : pairs) CHECK(i == j);
    Texts shifted(b.begin() + 1, b.end());
    CHECK(common_subsequence(a, shifted).empty());
    a.resize(4000);
    b.resize(4000);
    shifted.assign(b.begin() + 1, b.end());
    CHECK(common_subsequence(a, shifted).size() == 4);  // 4000 x 3999 are still compared
}

}  // namespace undercroft::tests
