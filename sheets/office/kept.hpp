/// \file kept.hpp
/// The keeper's own process: see keeper.hpp. It never returns to what its parent was doing.
#pragma once

#include <string>

#include "sheets/office/keeper.hpp"

namespace undercroft::sheets {

/// First letter of what goes over the link. To the keeper: a watch begins, ends, a path to clear up; from it:
/// the folder, the process of the office whenever it is started, a pipe that it listens at, its ending.
namespace message {
constexpr char watch = 'w';
constexpr char rest = 'r';
constexpr char path = 'p';
constexpr char folder = 'f';
constexpr char office = 'o';
constexpr char pipe = 'l';
constexpr char ended = 'e';
}  // namespace message

/// Keeps an office until it ends or the other end of the link is closed.
[[noreturn]] void keep_office(int link, const Start& start);

/// Becomes the office: a process group of its own that dies with its parent, has no network and no more
/// memory than it may, and reads file names as UTF-8 and numbers as English whatever the machine does.
[[noreturn]] void become_office(const Start& start, const std::string& folder, pid_t parent);

}  // namespace undercroft::sheets
