#include "units/unit_memory.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>

#include "units/text.hpp"

namespace undercroft {

namespace {

constexpr std::size_t longest_text = 23;
constexpr std::size_t slots = 256;

struct Slot {
    std::array<char16_t, longest_text> text{};
    std::uint8_t length = 0;  // 0: never used
    Unit unit;
};

std::size_t slot_of(std::u16string_view text) {
    std::uint32_t hash = 2166136261U;  // FNV-1a
    for (const char16_t c : text) hash = (hash ^ c) * 16777619U;
    return (hash ^ (hash >> 16)) % slots;
}

}  // namespace

Unit remembered_unit(std::u16string_view text) {
    thread_local const auto memory = std::make_unique<std::array<Slot, slots>>();
    if (text.empty() || text.size() > longest_text) return parse_unit(to_utf8(text));
    Slot& slot = (*memory)[slot_of(text)];
    const bool seen = slot.length == text.size() && std::equal(text.begin(), text.end(), slot.text.begin());
    if (!seen) {
        slot.unit = parse_unit(to_utf8(text));
        std::copy(text.begin(), text.end(), slot.text.begin());
        slot.length = static_cast<std::uint8_t>(text.size());
    }
    return slot.unit;
}

}  // namespace undercroft
