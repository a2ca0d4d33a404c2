/// \file main_thread.hpp
/// Work done as the window does it.
#pragma once

#include <functional>

#include "sheets/office/office.hpp"

namespace undercroft::tests {

/// Does some work in the office's main thread, as a pick of the menu is done there: what Calc does when it
/// is idle waits until the work is done, and does not come between two of its steps. What the work throws is
/// thrown here. \throws std::runtime_error when the office ends meanwhile
void in_main_thread(const sheets::Office& office, const std::function<void()>& work);

}  // namespace undercroft::tests
