#include "sheets/office/keeper.hpp"

#include <poll.h>
#include <signal.h>  // NOLINT(modernize-deprecated-headers): sigset_t is of POSIX
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <stdexcept>
#include <thread>

#include "sheets/office/kept.hpp"

namespace undercroft::sheets {

namespace {

using std::chrono::milliseconds;

/// No signal comes between a process and the first thing that it does.
class SignalsHeld {
public:
    SignalsHeld() {
        sigset_t all;
        sigfillset(&all);
        sigprocmask(SIG_SETMASK, &all, &before_);
    }
    SignalsHeld(const SignalsHeld&) = delete;
    SignalsHeld& operator=(const SignalsHeld&) = delete;
    ~SignalsHeld() { sigprocmask(SIG_SETMASK, &before_, nullptr); }

private:
    sigset_t before_{};
};

}  // namespace

Keeper::Keeper(const Start& start) {
    std::array<int, 2> ends{};
    if (socketpair(AF_UNIX, SOCK_SEQPACKET | SOCK_CLOEXEC, 0, ends.data()) != 0)
        throw std::runtime_error("cannot start the office");
    {
        const SignalsHeld held;
        keeper_ = fork();
        if (keeper_ == 0) {
            close(ends[0]);
            keep_office(ends[1], start);
        }
    }
    close(ends[1]);
    link_ = ends[0];
    constexpr int patience = 20000;
    const std::string folder = keeper_ > 0 ? received(patience) : std::string();
    const std::string office = folder.empty() ? std::string() : received(patience);
    if (office.empty() || office[0] != message::office) {
        close(link_);
        if (keeper_ > 0) waitpid(keeper_, nullptr, 0);
        throw std::runtime_error(folder.empty() ? "cannot make a folder for the office's profile"
                                                : "cannot start the office");
    }
    folder_ = folder.substr(1);
    clear_up_.push_back(folder_);
    office_ = std::stoi(office.substr(1));
}

Keeper::~Keeper() {
    while (hear(milliseconds(0))) {  // of the pipes that there are
    }
    close(link_);  // which the keeper takes for the end of the tool
    bury();
}

void Keeper::bury() const {
    if (keeper_ == 0) return;
    int status = 0;
    waitpid(keeper_, &status, 0);
    keeper_ = 0;
    if (!WIFSIGNALED(status)) return;
    // The office dies with its keeper, and is no child of this process that could be waited for.
    constexpr int looks = 200;
    for (int look = 0; look < looks && kill(-office_, SIGKILL) == 0; ++look)
        std::this_thread::sleep_for(milliseconds(10));
    std::error_code ignored;
    for (const std::filesystem::path& path : clear_up_) std::filesystem::remove_all(path, ignored);
}

std::string Keeper::received(int wait) const {
    pollfd link{link_, POLLIN, 0};
    if (poll(&link, 1, wait) <= 0) return {};
    std::array<char, 4096> text{};
    ssize_t length = recv(link_, text.data(), text.size(), 0);
    // Told first of a keeper that ended without hearing all that it was told; what it said itself comes
    // after.
    if (length < 0 && errno == ECONNRESET) length = recv(link_, text.data(), text.size(), 0);
    return length <= 0 ? std::string() : std::string(text.data(), static_cast<std::size_t>(length));
}

bool Keeper::hear(milliseconds wait) const {
    pollfd link{link_, POLLIN, 0};
    if (ending_ || poll(&link, 1, static_cast<int>(wait.count())) <= 0) return false;
    const std::string told = received(0);
    if (!told.empty() && told[0] == message::office)
        office_ = std::stoi(told.substr(1));
    else if (!told.empty() && told[0] == message::pipe)
        clear_up_.emplace_back(told.substr(1));
    else if (told.size() == 2 && told[0] == message::ended)
        ending_ = static_cast<Ending>(told[1] - '0');
    else {  // where the keeper itself was killed, the office is gone with it
        ending_ = Ending::by_itself;
        bury();
    }
    return true;
}

pid_t Keeper::office() const {
    while (hear(milliseconds(0))) {
    }
    return office_;
}

std::optional<Ending> Keeper::ending_within(milliseconds wait) const {
    const auto until = std::chrono::steady_clock::now() + wait;
    const auto left = [&until] {
        const auto time = std::chrono::ceil<milliseconds>(until - std::chrono::steady_clock::now());
        return std::max(time, milliseconds(0));
    };
    while (hear(left())) {
    }
    return ending_;
}

void Keeper::tell(const std::string& text) const {
    (void)send(link_, text.data(), text.size(), MSG_NOSIGNAL);  // an office that is gone needs no word
}

void Keeper::clear_up(const std::filesystem::path& path) const {
    clear_up_.push_back(std::filesystem::absolute(path));
    tell(message::path + clear_up_.back().string());
}

Keeper::Watch::Watch(const Keeper& keeper) : keeper_(keeper) {
    keeper_.tell({message::watch});
}

Keeper::Watch::~Watch() {
    keeper_.tell({message::rest});
}

}  // namespace undercroft::sheets
