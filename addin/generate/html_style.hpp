/// \file html_style.hpp
/// Look and search of the reference as a page. Nothing is loaded from elsewhere.
#pragma once

namespace undercroft::addin {

/// The style sheet, in light and dark and on paper.
extern const char* const page_style;
/// Hides what does not hold every word that is searched for.
extern const char* const page_script;

}  // namespace undercroft::addin
