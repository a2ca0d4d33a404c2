#include <linux/audit.h>
#include <linux/filter.h>
#include <linux/seccomp.h>
#include <signal.h>  // NOLINT(modernize-deprecated-headers): SIGKILL for prctl()
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstddef>
#include <cstdlib>

#include "sheets/office/kept.hpp"

namespace undercroft::sheets {

namespace {

#if defined(__x86_64__)
constexpr unsigned machine = AUDIT_ARCH_X86_64;
#elif defined(__aarch64__)
constexpr unsigned machine = AUDIT_ARCH_AARCH64;
#else
constexpr unsigned machine = 0;
#endif

/// From here on no socket to another machine, nor to this one by its address, can be made. A kernel that
/// cannot say so leaves it to the settings of the profile.
void leave_the_network() {
    constexpr unsigned short load = BPF_LD | BPF_W | BPF_ABS;
    constexpr unsigned short equal = BPF_JMP | BPF_JEQ | BPF_K;
    constexpr unsigned short give = BPF_RET | BPF_K;
    constexpr unsigned refuse = SECCOMP_RET_ERRNO | EACCES;
    std::array<sock_filter, 9> filter = {{
        {load, 0, 0, offsetof(seccomp_data, arch)},
        {equal, 0, 5, machine},
        {load, 0, 0, offsetof(seccomp_data, nr)},
        {equal, 0, 3, SYS_socket},
        {load, 0, 0, offsetof(seccomp_data, args)},
        {equal, 2, 0, AF_INET},
        {equal, 1, 0, AF_INET6},
        {give, 0, 0, SECCOMP_RET_ALLOW},
        {give, 0, 0, refuse},
    }};
    sock_fprog program{static_cast<unsigned short>(filter.size()), filter.data()};
    if (machine != 0 && prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0)
        prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &program);
}

void limit(int resource, double most) {
    const rlimit both{static_cast<rlim_t>(most), static_cast<rlim_t>(most)};
    setrlimit(static_cast<__rlimit_resource>(resource), &both);
}

void with_folder(std::string& text, const std::string& folder) {
    for (std::size_t at = 0; (at = text.find("{}", at)) != std::string::npos; at += folder.size())
        text.replace(at, 2, folder);
}

}  // namespace

void become_office(const Start& start, const std::string& folder, pid_t parent) {
    setpgid(0, 0);
    prctl(PR_SET_PDEATHSIG, SIGKILL);
    if (getppid() != parent) _exit(1);
    for (const int signal_number : {SIGHUP, SIGINT, SIGQUIT, SIGTERM, SIGPIPE})
        signal(signal_number, SIG_DFL);
    // The keeper looks at what is really in use; this ends what grows faster than it looks. The office
    // reserves more than it uses.
    constexpr double gibibyte = 1024.0 * 1024 * 1024;
    constexpr double reserved = 4;
    limit(RLIMIT_AS, (2 * start.limits.memory + reserved) * gibibyte);
    limit(RLIMIT_CORE, 0);
    leave_the_network();
    const std::string temporary = folder + "/temp";
    for (const char* variable : {"TMPDIR", "TMP", "TEMP"}) setenv(variable, temporary.c_str(), 1);
    setenv("LC_ALL", "C.UTF-8", 1);
    setenv("LANG", "C.UTF-8", 1);
    unsetenv("LANGUAGE");
    setenv("SAL_ENABLE_FILE_LOCKING", "1", 1);
    std::vector<std::string> texts = start.command;
    std::vector<char*> pointers;
    for (std::string& text : texts) {
        with_folder(text, folder);
        pointers.push_back(text.data());
    }
    pointers.push_back(nullptr);
    execv(pointers[0], pointers.data());
    _exit(127);
}

}  // namespace undercroft::sheets
