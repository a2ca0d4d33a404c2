/// \file properties.hpp
/// What a workbook of ours says about itself: user-defined properties of the document, which every template
/// carries and every workbook made from it keeps.
#pragma once

#include <string_view>

namespace undercroft::audit {

inline constexpr std::string_view template_property = "Undercroft template";  ///< `storage`
inline constexpr std::string_view system_property = "Undercroft units";       ///< `SI`, `US`
inline constexpr std::string_view template_version_property = "Undercroft template version";
inline constexpr std::string_view functions_property = "Undercroft functions";  ///< their version

}  // namespace undercroft::audit
