/// \file local_rain.hpp
/// The caution of every function that takes rain.
#pragma once

namespace undercroft::addin {

inline constexpr const char* local_rain =
    "Rain of the place and frequency that the local authority asks for; its method governs";

}  // namespace undercroft::addin
