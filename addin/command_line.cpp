#include "addin/command_line.hpp"

#include <CLI/CLI.hpp>
#include <utility>

namespace undercroft {

namespace {

void demand(CLI::Option& option, Existing existing) {
    if (existing == Existing::file) option.check(CLI::ExistingFile);
    if (existing == Existing::folder) option.check(CLI::ExistingDirectory);
}

}  // namespace

CommandLine::CommandLine(const std::string& purpose, const std::string& tool)
    : app_(std::make_unique<CLI::App>(purpose, tool)) {}

CommandLine::~CommandLine() = default;

void CommandLine::add_required(const std::string& name, std::filesystem::path& path, const std::string& help,
                               Existing existing) {
    demand(*app_->add_option(name, path, help)->required(), existing);
}

void CommandLine::add_required(const std::string& name, std::vector<std::filesystem::path>& paths,
                               const std::string& help) {
    app_->add_option(name, paths, help)->required();
}

void CommandLine::add_required(const std::string& name, std::vector<std::string>& texts,
                               const std::string& help,
                               const std::function<std::string(const std::string&)>& hindrance) {
    CLI::Option* const option = app_->add_option(name, texts, help)->required();
    if (hindrance) option->check(hindrance);
}

void CommandLine::add_optional(const std::string& name, std::filesystem::path& path, const std::string& help,
                               Existing existing) {
    demand(*app_->add_option(name, path, help), existing);
}

void CommandLine::add_optional(const std::string& name, std::vector<std::string>& texts,
                               const std::string& help) {
    app_->add_option(name, texts, help)->allow_extra_args(false);
}

void CommandLine::add_optional(const std::string& name, double& number, const std::string& help, double least,
                               double most) {
    app_->add_option(name, number, help)->check(CLI::Range(least, most));
}

void CommandLine::add_optional(const std::string& name, std::chrono::seconds& time, const std::string& help,
                               std::chrono::seconds least, std::chrono::seconds most) {
    app_->add_option_function<long>(
            name, [&time](long seconds) { time = std::chrono::seconds(seconds); }, help)
        ->check(CLI::Range(long{least.count()}, long{most.count()}));
}

void CommandLine::exclude(const std::string& name, const std::string& other) {
    app_->get_option(name)->excludes(app_->get_option(other));
}

void CommandLine::need(const std::string& name, const std::string& needed) {
    app_->get_option(name)->needs(app_->get_option(needed));
}

void CommandLine::check_together(std::function<void()> check) {
    check_ = std::move(check);
}

std::optional<int> CommandLine::read(int argc, const char* const* argv) {
    constexpr int wrong = 2;
    try {
        app_->parse(argc, argv);
        if (check_) check_();
    } catch (const CLI::ParseError& end) {
        return app_->exit(end) == 0 ? 0 : wrong;
    } catch (const WrongCommandLine& error) {
        app_->exit(CLI::ValidationError(error.what()));
        return wrong;
    }
    return std::nullopt;
}

}  // namespace undercroft
