#include "addin/audit/book/fingerprint.hpp"

#include <algorithm>

#include "addin/formula/formula.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// A text on one line, so that no text can be taken for two cells.
void append_line(std::string& text, std::string_view part) {
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

const std::string* digest_of(const Fingerprint& fingerprint, const std::string& sheet) {
    for (const auto& [name, digest] : fingerprint.sheets)
        if (name == sheet) return &digest;
    return nullptr;
}

}  // namespace

std::string canonical_text(const BookSheet& sheet) {
    std::string text = "sheet\t";
    append_line(text, sheet.name);
    text += '\n';
    for (const BookCell& cell : sheet.cells) {
        if (cell.is_formula() && cell.array >= 0) {  // one line for the whole of an array formula
            const Area& area = sheet.arrays[static_cast<std::size_t>(cell.array)];
            if (area.first_row != cell.row || area.first_column != cell.column) continue;
            text += addin::cell_letters(cell.column, cell.row) + ":" +
                    addin::cell_letters(area.last_column, area.last_row) + "\t";
        } else {
            text += addin::cell_letters(cell.column, cell.row) + "\t";
        }
        if (cell.is_formula()) {
            append_line(text, cell.formula);
        } else if (const double* number = cell.number()) {
            text += exact_text(*number);
        } else if (const std::string* words = cell.text()) {
            text += '"';
            append_line(text, *words);
        }
        text += '\n';
    }
    return text;
}

std::string canonical_text(const Book& book) {
    std::vector<std::string> names;
    for (const DefinedName& name : book.names) {
        std::string line = "name\t";
        append_line(line, name.name);
        if (name.sheet >= 0 && is_audit_sheet(book.sheets[static_cast<std::size_t>(name.sheet)]))
            continue;
        if (name.sheet >= 0) line += " on " + book.sheets[static_cast<std::size_t>(name.sheet)].name;
        line += '\t';
        append_line(line, name.content);
        names.push_back(line + '\n');
    }
    std::sort(names.begin(), names.end());
    std::string text;
    for (const std::string& name : names) text += name;
    for (const BookSheet& sheet : book.sheets)
        if (!is_audit_sheet(sheet)) text += canonical_text(sheet);
    return text;
}

Fingerprint fingerprint(const Book& book, const Digest& digest) {
    Fingerprint made;
    if (!digest) return made;
    made.whole = digest(canonical_text(book));
    for (const BookSheet& sheet : book.sheets)
        if (!is_audit_sheet(sheet))
            made.sheets.emplace_back(sheet.name, digest(canonical_text(sheet)));
    return made;
}

std::string state_of(const Signature& signature, const Fingerprint& now) {
    if (signature.checker.empty()) return "not signed";
    if (signature.of.whole == now.whole) return "the workbook is what was signed";
    std::vector<std::string> changed;
    for (const auto& [name, digest] : now.sheets) {
        const std::string* then = digest_of(signature.of, name);
        if (then == nullptr)
            changed.push_back(name + " (new)");
        else if (!digest.starts_with(*then) || then->empty())
            changed.push_back(name);
    }
    for (const auto& [name, digest] : signature.of.sheets)
        if (digest_of(now, name) == nullptr) changed.push_back(name + " (gone)");
    return "changed since: " +
           (changed.empty() ? "defined names, or the order of the sheets" : joined(changed));
}

}  // namespace undercroft::audit
