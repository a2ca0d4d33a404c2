#include "sheets/builder/sheet_text.hpp"
#include "sheets/builder/job_text.hpp"
#include "sheets/builder/lines.hpp"
#include "sheets/builder/worked_examples.hpp"
#include "tests/fuzz/targets.hpp"

namespace undercroft::fuzz {

namespace {

/// A text is read, or its mistake is told with the line.
template <class Read>
void read_or_tell(const Read& read) {
    try {
        (void)read();
    } catch (const sheets::TextMistake& mistake) {
        promise(std::string(mistake.what()).starts_with("line "), "a mistake without its line");
    }
}

}  // namespace

void sheet_text(std::string_view bytes) {
    read_or_tell([&] { return sheets::read_sheet(bytes); });
    read_or_tell([&] { return sheets::read_workbooks(bytes); });
    read_or_tell([&] { return sheets::read_worked_examples(bytes); });
    read_or_tell(
        [&] { return sheets::read_job(bytes, [](const std::string&) { return std::string("a | 1 m\n"); }); });
}

}  // namespace undercroft::fuzz
