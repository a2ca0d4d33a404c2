#include "sheets/office/kept.hpp"

#include <fcntl.h>
#include <linux/close_range.h>
#include <poll.h>
#include <signal.h>  // NOLINT(modernize-deprecated-headers): kill() is of POSIX
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <fstream>
#include <set>
#include <sstream>
#include <vector>

namespace undercroft::sheets {

namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

/// Out of the reach of whatever ends the tool, with nothing of the tool's in its hands but the link.
void stand_apart(int link) {
    setsid();
    for (const int signal_number : {SIGHUP, SIGINT, SIGQUIT, SIGTERM, SIGPIPE})
        signal(signal_number, SIG_IGN);
    sigset_t none;
    sigemptyset(&none);
    sigprocmask(SIG_SETMASK, &none, nullptr);
    constexpr int own_link = 3;
    if (link != own_link) dup2(link, own_link);
    close_range(own_link + 1, ~0U, 0);
    fcntl(own_link, F_SETFD, FD_CLOEXEC);
    const int nothing = open("/dev/null", O_RDWR);
    for (const int standard : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) dup2(nothing, standard);
    close(nothing);
    prctl(PR_SET_NAME, "office_keeper");
    prctl(PR_SET_CHILD_SUBREAPER, 1);  // what the office leaves behind becomes the keeper's to end
}

/// \return the folder's name; empty when it cannot be made. Names of pipes must be short, so it is in /tmp
/// where the folder for such things has a long name.
std::string made_folder(const std::map<std::string, std::string>& files) {
    constexpr std::size_t longest = 40;
    std::error_code none;
    std::string place = fs::temp_directory_path(none).string();
    if (none || place.size() > longest) place = "/tmp";
    std::string folder = place + "/undercroft-office-XXXXXX";
    if (mkdtemp(folder.data()) == nullptr) return {};
    fs::create_directory(folder + "/temp", none);
    for (const auto& [name, text] : files) {
        const fs::path file = fs::path(folder) / name;
        fs::create_directories(file.parent_path(), none);
        std::ofstream(file) << text;
    }
    return folder;
}

/// In bytes; 0 when it is gone.
double memory_of(pid_t process) {
    std::ifstream statm("/proc/" + std::to_string(process) + "/statm");
    double whole = 0;
    double resident = 0;
    statm >> whole >> resident;
    return resident * static_cast<double>(sysconf(_SC_PAGESIZE));
}

/// The pipes that an office listens at. It makes them in /tmp, whatever it is told, and leaves them when it
/// is killed.
std::vector<std::string> pipes_of(pid_t process) {
    std::set<std::string> own;
    std::error_code none;
    for (const auto& file : fs::directory_iterator("/proc/" + std::to_string(process) + "/fd", none)) {
        const std::string target = fs::read_symlink(file, none).string();  // socket:[12345]
        if (target.starts_with("socket:[")) own.insert(target.substr(8, target.size() - 9));
    }
    std::vector<std::string> pipes;
    std::ifstream sockets("/proc/net/unix");
    for (std::string line; std::getline(sockets, line);) {
        std::istringstream words(line);
        std::string number, users, protocol, flags, type, state, inode, path;
        words >> number >> users >> protocol >> flags >> type >> state >> inode >> path;
        if (own.contains(inode) && path.find("/OSL_PIPE_") != std::string::npos) pipes.push_back(path);
    }
    return pipes;
}

/// Ends every child there is, and theirs.
void end_children() {
    const std::string list = "/proc/self/task/" + std::to_string(getpid()) + "/children";
    while (true) {
        std::ifstream children(list);
        bool any = false;
        for (pid_t child = 0; children >> child; any = true) kill(child, SIGKILL);
        if (!any) return;
        while (waitpid(-1, nullptr, 0) > 0) {
        }
    }
}

class Kept {
public:
    Kept(int link, const Start& start) : link_(link), start_(start), folder_(made_folder(start.files)) {}

    void run() {
        if (folder_.empty()) return;
        tell(message::folder + folder_);
        begin();
        while (office_ > 0 && !ending_ && hear()) look();
        note_pipes();
        if (office_ > 0) kill(-office_, SIGKILL);
        end_children();
        // Told before the clearing up, for which a tool that asks why its office is gone would not wait.
        if (ending_) tell({message::ended, static_cast<char>('0' + static_cast<int>(*ending_))});
        clear_up_.push_back(folder_);
        clear_up_.insert(clear_up_.end(), pipes_.begin(), pipes_.end());
        std::error_code ignored;
        for (const std::string& path : clear_up_) fs::remove_all(path, ignored);
    }

private:
    void tell(const std::string& text) const { (void)send(link_, text.data(), text.size(), MSG_NOSIGNAL); }

    void begin() {
        const pid_t keeper = getpid();
        office_ = fork();
        if (office_ == 0) become_office(start_, folder_, keeper);
        if (office_ < 0) return;
        setpgid(office_, office_);  // both do it, so that it is done when either goes on
        tell(message::office + std::to_string(office_));
    }

    /// The tool is told of each, so that it can clear up for a keeper that was killed.
    void note_pipes() {
        for (const std::string& pipe : pipes_of(office_))
            if (pipes_.insert(pipe).second) tell(message::pipe + pipe);
    }

    /// \return false when the tool is gone.
    bool hear() {
        constexpr int between_looks = 50;  // ms
        pollfd link{link_, POLLIN, 0};
        if (poll(&link, 1, between_looks) <= 0) return true;
        std::array<char, 4096> text{};
        const ssize_t length = recv(link_, text.data(), text.size(), 0);
        if (length <= 0) return false;
        note_pipes();
        if (text[0] == message::watch) deadline_ = Clock::now() + start_.limits.time;
        if (text[0] == message::rest) deadline_.reset();
        if (text[0] == message::path) clear_up_.emplace_back(text.data() + 1, text.data() + length);
        return true;
    }

    void look() {
        int status = 0;
        for (pid_t ended = 0; (ended = waitpid(-1, &status, WNOHANG)) > 0;)
            if (ended == office_) take_end(status);
        if (ending_) return;
        constexpr std::size_t pipes_of_an_office =
            2;  // that of the link, and that by which offices find each other
        if (pipes_.size() < pipes_of_an_office) note_pipes();
        constexpr double gibibyte = 1024.0 * 1024 * 1024;
        if (memory_of(office_) > start_.limits.memory * gibibyte) ending_ = Ending::out_of_memory;
        if (deadline_ && Clock::now() > *deadline_) ending_ = Ending::out_of_time;
    }

    /// The office asks to be started again after its first look at a new profile.
    void take_end(int status) {
        constexpr int again = 79;
        constexpr int again_normally = 81;
        const int code = WIFEXITED(status) ? WEXITSTATUS(status) : 0;
        const bool starts_again = code == again || code == again_normally;
        if (starts_again) begin();
        if (!starts_again || office_ <= 0) ending_ = Ending::by_itself;
    }

    int link_;
    const Start& start_;
    std::string folder_;
    std::vector<std::string> clear_up_;
    std::set<std::string> pipes_;
    pid_t office_ = 0;
    std::optional<Clock::time_point> deadline_;
    std::optional<Ending> ending_;
};

}  // namespace

void keep_office(int link, const Start& start) {
    stand_apart(link);
    constexpr int own_link = 3;
    try {
        Kept(own_link, start).run();
    } catch (...) {  // nobody is there to be told
    }
    _exit(0);
}

}  // namespace undercroft::sheets
