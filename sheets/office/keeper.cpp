#include "sheets/office/keeper.hpp"

#include <poll.h>
#include <signal.h>  // NOLINT(modernize-deprecated-headers): sigset_t is of POSIX
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

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
    office_ = std::stoi(office.substr(1));
}

Keeper::~Keeper() {
    close(link_);  // which the keeper takes for the end of the tool
    waitpid(keeper_, nullptr, 0);
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

std::optional<Ending> Keeper::ending_within(milliseconds wait) const {
    if (ending_) return ending_;
    pollfd link{link_, POLLIN, 0};
    if (poll(&link, 1, static_cast<int>(wait.count())) <= 0) return {};
    // Where the keeper itself was ended, the office is gone with it.
    const std::string told = received(0);
    ending_ = told.size() == 2 && told[0] == message::ended ? static_cast<Ending>(told[1] - '0')
                                                            : Ending::by_itself;
    return ending_;
}

void Keeper::tell(const std::string& text) const {
    (void)send(link_, text.data(), text.size(), MSG_NOSIGNAL);  // an office that is gone needs no word
}

void Keeper::clear_up(const std::filesystem::path& path) const {
    tell(message::path + std::filesystem::absolute(path).string());
}

Keeper::Watch::Watch(const Keeper& keeper) : keeper_(keeper) {
    keeper_.tell({message::watch});
}

Keeper::Watch::~Watch() {
    keeper_.tell({message::rest});
}

}  // namespace undercroft::sheets
