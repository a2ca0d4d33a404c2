#include "units/unit_memory.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>

#include "units/text.hpp"

namespace undercroft {

namespace {

constexpr std::size_t longest_text = 23;
constexpr std::size_t bins = 256;

std::size_t bin_of(std::u16string_view text) {
    std::uint32_t hash = 2166136261U;  // FNV-1a
    for (const char16_t c : text) hash = (hash ^ c) * 16777619U;
    return (hash ^ (hash >> 16)) % bins;
}

/// Texts and what was read from them: one in each bin, which the next text of that bin takes over.
template <class Meaning>
class Memory {
public:
    /// \param read turns UTF-8 into the meaning; what it throws is remembered by nobody.
    template <class Read>
    Meaning recall(std::u16string_view text, const Read& read) {
        if (text.empty() || text.size() > longest_text) return read(to_utf8(text));
        Remembered& found = remembered_[bin_of(text)];
        const bool seen =
            found.length == text.size() && std::equal(text.begin(), text.end(), found.text.begin());
        if (!seen) {
            found.meaning = read(to_utf8(text));
            std::copy(text.begin(), text.end(), found.text.begin());
            found.length = static_cast<std::uint8_t>(text.size());
        }
        return found.meaning;
    }

private:
    struct Remembered {
        std::array<char16_t, longest_text> text{};
        std::uint8_t length = 0;  // 0: never used
        Meaning meaning{};
    };
    std::array<Remembered, bins> remembered_{};
};

}  // namespace

Unit remembered_unit(std::u16string_view text) {
    thread_local const auto memory = std::make_unique<Memory<Unit>>();
    return memory->recall(text, parse_unit);
}

Quantity remembered_quantity(std::u16string_view text) {
    thread_local const auto memory = std::make_unique<Memory<Quantity>>();
    return memory->recall(text, parse_quantity);
}

}  // namespace undercroft
