/// \file dual.hpp
/// What a sheet as text says once for both systems of units, or once for each.
#pragma once

#include <string>

namespace undercroft::sheets {

/// The two systems of units in which every template is built from the same text.
enum class System { si, us };

/// One reading for each system.
template <class T>
struct Dual {
    T si;
    T us;
    [[nodiscard]] const T& in(System system) const { return system == System::si ? si : us; }
};

using DualText = Dual<std::string>;

/// `305 mm // 12 in`, or one reading for both. A `//` inside double quotes does not part them.
[[nodiscard]] DualText dual(const std::string& field);

/// Both readings, each through the same function.
template <class Read>
[[nodiscard]] auto each_reading(const DualText& text, const Read& read) {
    return Dual<decltype(read(text.si))>{read(text.si), read(text.us)};
}

}  // namespace undercroft::sheets
