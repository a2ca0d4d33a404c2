/// \file catch.hpp
/// Catch2 of either line, by the names of the second: Debian 12 has 2.13, Debian 13 has 3.7.
#pragma once

#if __has_include(<catch2/catch_all.hpp>)

#include <catch2/catch_all.hpp>
#include <string>

namespace Catch {

using Matchers::EndsWith;
using Matchers::StartsWith;
using TestEventListenerBase = EventListenerBase;

template <class T>
using MatcherBase = Matchers::MatcherBase<T>;

/// Of a text: the third line's matcher of this name looks into ranges.
inline auto Contains(const std::string& part) {
    return Matchers::ContainsSubstring(part);
}

}  // namespace Catch

using Catch::Approx;

#else

#include <catch2/catch.hpp>

#endif
