#include "addin/audit/book/signed_text.hpp"

#include <algorithm>
#include <charconv>

#include "addin/formula/formula.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// Digits of a result: fewer than a computer keeps, so that another one signs the same.
constexpr int digits_of_results = 12;

std::string rounded(double number) {
    char text[40];
    const auto end =
        std::to_chars(text, text + sizeof text, number, std::chars_format::general, digits_of_results);
    return {text, end.ptr};
}

void append_place(std::string& text, const BookCell& cell) {
    text += addin::cell_letters(cell.column, cell.row);
    text += '\t';
}

/// The release of our functions is no result of the job.
bool shows_version(const BookCell& cell) {
    return cell.is_formula() && cell.formula.find("UC.VERSION(") != std::string::npos;
}

std::string formulas(const BookSheet& sheet) {
    std::string text;
    for (const BookCell& cell : sheet.cells) {
        if (!cell.is_formula()) continue;
        append_place(text, cell);
        if (cell.array >= 0) {
            const Area& area = sheet.arrays[static_cast<std::size_t>(cell.array)];
            text += addin::cell_letters(area.first_column, area.first_row) + ":" +
                    addin::cell_letters(area.last_column, area.last_row) + "\t";
        }
        append_on_one_line(text, cell.formula);
        text += '\n';
    }
    return text;
}

std::string typed_numbers(const BookSheet& sheet) {
    std::string text;
    for (const BookCell& cell : sheet.cells) {
        if (cell.is_formula() || cell.number() == nullptr) continue;
        append_place(text, cell);
        text += exact_text(*cell.number()) + '\n';
    }
    return text;
}

std::string texts_as_typed(const BookSheet& sheet) {
    std::string text;
    for (const BookCell& cell : sheet.cells) {
        if (cell.is_formula() || cell.text() == nullptr) continue;
        append_place(text, cell);
        append_on_one_line(text, *cell.text());
        text += '\n';
    }
    return text;
}

/// A sentence without the numbers in it, which each country writes by its own signs; they are those of other
/// cells.
std::string without_numbers(const std::string& sentence) {
    // Of Arabic the digits, the percent sign and the two separators: U+0660 to U+066C.
    constexpr unsigned char arabic = 0xD9;
    constexpr unsigned char first_digit = 0xA0;
    constexpr unsigned char last_separator = 0xAC;
    std::string words;
    for (std::size_t i = 0; i < sentence.size(); ++i) {
        const char c = sentence[i];
        const auto next = static_cast<unsigned char>(i + 1 < sentence.size() ? sentence[i + 1] : 0);
        if (static_cast<unsigned char>(c) == arabic && next >= first_digit && next <= last_separator)
            ++i;
        else if ((c < '0' || c > '9') && c != '.' && c != ',' && c != '%')
            words += c;
    }
    return words;
}

std::string results(const BookSheet& sheet) {
    std::string text;
    for (const BookCell& cell : sheet.cells) {
        if (!cell.is_formula() || shows_version(cell)) continue;
        append_place(text, cell);
        if (cell.error != 0)
            text += "error " + std::to_string(cell.error);
        else if (const double* number = cell.number())
            text += rounded(*number);
        else if (const std::string* words = cell.text())
            append_on_one_line(text, without_numbers(*words));
        text += '\n';
    }
    return text;
}

std::string formats(const BookSheet& sheet) {
    std::string text;
    for (const BookCell& cell : sheet.cells) {
        const CellFormat& format = sheet.formats[cell.format];
        append_place(text, cell);
        text += std::to_string(static_cast<int>(format.number.shown_as)) + '\t';
        append_on_one_line(text, format.number.unit);
        text += '\t';
        append_on_one_line(text, format.words);
        text += '\t' + std::to_string(format.number.decimals) + '\t' +
                std::to_string(format.number.thousands) + (format.number.hides ? "\thides\n" : "\n");
    }
    return text;
}

std::string visibility(const BookSheet& sheet) {
    std::string text = sheet.hidden ? "hidden\n" : "shown\n";
    for (const std::int32_t row : sheet.hidden_rows) text += "row " + std::to_string(row) + '\n';
    for (const std::int32_t column : sheet.hidden_columns) text += "column " + std::to_string(column) + '\n';
    for (const std::int32_t row : sheet.flat_rows) text += "too low " + std::to_string(row) + '\n';
    for (const Area& area : sheet.merged)
        text += "under one " + addin::cell_letters(area.first_column, area.first_row) + ":" +
                addin::cell_letters(area.last_column, area.last_row) + '\n';
    for (const BookCell& cell : sheet.cells)
        if (sheet.formats[cell.format].unseen) {
            text += "unseen ";
            append_place(text, cell);
            text += '\n';
        }
    return text;
}

std::string comments(const BookSheet& sheet) {
    std::string text;
    for (const CellComment& comment : sheet.comments) {
        text += addin::cell_letters(comment.column, comment.row) + '\t';
        append_on_one_line(text, comment.text);
        text += '\n';
    }
    return text;
}

std::string protection(const BookSheet& sheet) {
    std::string text = sheet.is_protected ? "protected\n" : "open\n";
    for (const BookCell& cell : sheet.cells)
        if (!sheet.formats[cell.format].locked) {
            append_place(text, cell);
            text += '\n';
        }
    return text;
}

std::string names(const Book& book) {
    std::vector<std::string> lines;
    for (const DefinedName& name : book.names) {
        const bool of_sheet = name.sheet >= 0;
        if (of_sheet && is_audit_sheet(book.sheets[static_cast<std::size_t>(name.sheet)])) continue;
        std::string line;
        append_on_one_line(line, of_sheet ? book.sheets[static_cast<std::size_t>(name.sheet)].name : "");
        line += '\t';
        append_on_one_line(line, name.name);
        line += '\t';
        append_on_one_line(line, name.content);
        lines.push_back(line + '\n');
    }
    std::sort(lines.begin(), lines.end());
    return joined(lines, "");
}

std::string settings(const Book& book) {
    const auto yes_or_no = [](bool yes) { return std::string(yes ? "yes\n" : "no\n"); };
    std::string text = "computes by itself " + yes_or_no(book.computes_by_itself) + "repeats circles " +
                       yes_or_no(book.iterates) + "cuts to the digits shown " +
                       yes_or_no(book.rounds_to_shown) + "days from " + book.null_date + '\n';
    std::vector<std::string> links = book.links;
    std::sort(links.begin(), links.end());
    for (const std::string& link : links) {
        append_on_one_line(text, link);
        text += '\n';
    }
    for (const auto& [name, value] : book.properties) {
        append_on_one_line(text, name);
        text += '\t';
        append_on_one_line(text, value);
        text += '\n';
    }
    return text;
}

std::string sheets_in_order(const Book& book) {
    std::string text;
    for (const BookSheet& sheet : book.sheets) {
        if (is_audit_sheet(sheet)) continue;
        append_on_one_line(text, sheet.name);
        text += '\n';
    }
    return text;
}

std::string macros(const Book& book) {
    std::string text = book.has_macros ? "yes\n" : "no\n";
    for (const std::string& source : book.macros) {
        append_on_one_line(text, source);
        text += '\n';
    }
    return text;
}

}  // namespace

void append_on_one_line(std::string& text, std::string_view part) {
    for (const char c : part) {
        if (c == '\\')
            text += "\\\\";
        else if (c == '\n')
            text += "\\n";
        else if (c == '\r')
            text += "\\r";
        else if (c == '\t')
            text += "\\t";
        else
            text += c;
    }
}

std::vector<SignedText> signed_texts(const Book& book) {
    using OfSheet = std::string (*)(const BookSheet&);
    constexpr std::pair<const char*, OfSheet> of_sheets[] = {
        {"formulas", formulas}, {"inputs", typed_numbers}, {"units and texts", texts_as_typed},
        {"results", results},   {"formats", formats},      {"what is hidden", visibility},
        {"comments", comments}, {"protection", protection}};
    using OfBook = std::string (*)(const Book&);
    constexpr std::pair<const char*, OfBook> of_book[] = {{"names", names},
                                                          {"settings and properties", settings},
                                                          {"the order of the sheets", sheets_in_order},
                                                          {"macros", macros}};
    std::vector<SignedText> texts;
    for (const auto& [kind, text_of] : of_sheets)
        for (const BookSheet& sheet : book.sheets)
            if (!is_audit_sheet(sheet)) texts.push_back({kind, sheet.name, text_of(sheet)});
    for (const auto& [kind, text_of] : of_book) texts.push_back({kind, "", text_of(book)});
    return texts;
}

}  // namespace undercroft::audit
