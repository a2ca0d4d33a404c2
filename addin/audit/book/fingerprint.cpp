#include "addin/audit/book/fingerprint.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "addin/audit/book/signed_text.hpp"
#include "addin/formula/formula.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

constexpr std::size_t digits_of_parts = 16;

const std::string* digest_of(const Fingerprint& fingerprint, const std::string& sheet) {
    for (const auto& [name, digest] : fingerprint.sheets)
        if (name == sheet) return &digest;
    return nullptr;
}

}  // namespace

std::string canonical_text(const BookSheet& sheet) {
    std::string text = "sheet\t";
    append_on_one_line(text, sheet.name);
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
            append_on_one_line(text, cell.formula);
        } else if (const double* number = cell.number()) {
            text += exact_text(*number);
        } else if (const std::string* words = cell.text()) {
            text += '"';
            append_on_one_line(text, *words);
        }
        text += '\n';
    }
    return text;
}

std::string canonical_text(const Book& book) {
    std::vector<std::string> names;
    for (const DefinedName& name : book.names) {
        std::string line = "name\t";
        append_on_one_line(line, name.name);
        if (name.sheet >= 0 && is_audit_sheet(book.sheets[static_cast<std::size_t>(name.sheet)])) continue;
        if (name.sheet >= 0) line += " on " + book.sheets[static_cast<std::size_t>(name.sheet)].name;
        line += '\t';
        append_on_one_line(line, name.content);
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
    made.first_release = digest(canonical_text(book));
    for (const BookSheet& sheet : book.sheets)
        if (!is_audit_sheet(sheet)) made.sheets.emplace_back(sheet.name, digest(canonical_text(sheet)));
    std::string all;
    for (const SignedText& part : signed_texts(book)) {
        made.parts.push_back({part.kind, part.sheet, digest(part.text).substr(0, digits_of_parts)});
        append_on_one_line(all, part.kind);
        all += '\t';
        append_on_one_line(all, part.sheet);
        all += '\t';
        append_on_one_line(all, part.text);
        all += '\n';
    }
    made.whole = digest(all);
    return made;
}

bool still_holds(const Signature& signature, const Fingerprint& now) {
    return signature.of.whole == (signature.of.parts.empty() ? now.first_release : now.whole);
}

namespace {

/// Of our first release: by sheets alone.
std::vector<std::string> changed_sheets(const Signature& signature, const Fingerprint& now) {
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
    return changed;
}

std::set<std::string> sheets_in(const std::vector<FingerprintPart>& parts) {
    std::set<std::string> sheets;
    for (const FingerprintPart& part : parts)
        if (!part.sheet.empty()) sheets.insert(part.sheet);
    return sheets;
}

/// `inputs in Flow; results in Flow and Storage; settings`
std::vector<std::string> changed_kinds(const std::vector<FingerprintPart>& then,
                                       const std::vector<FingerprintPart>& now) {
    const std::set<std::string> sheets_then = sheets_in(then);
    const std::set<std::string> sheets_now = sheets_in(now);
    std::vector<std::string> changed;
    std::vector<std::string> kinds;
    std::map<std::string, std::vector<std::string>> sheets;
    for (const FingerprintPart& part : now) {
        if (!part.sheet.empty() && !sheets_then.contains(part.sheet)) continue;
        if (std::find(then.begin(), then.end(), part) != then.end()) continue;
        if (!sheets.contains(part.kind)) kinds.push_back(part.kind);
        std::vector<std::string>& in = sheets[part.kind];
        if (!part.sheet.empty()) in.push_back(part.sheet);
    }
    for (const std::string& kind : kinds)
        changed.push_back(sheets[kind].empty() ? kind : kind + " in " + joined(sheets[kind], ", ", " and "));
    for (const std::string& sheet : sheets_now)
        if (!sheets_then.contains(sheet)) changed.push_back("the sheet " + sheet + " is new");
    for (const std::string& sheet : sheets_then)
        if (!sheets_now.contains(sheet)) changed.push_back("the sheet " + sheet + " is gone");
    return changed;
}

}  // namespace

std::string state_of(const Signature& signature, const Fingerprint& now) {
    if (signature.checker.empty()) return "not signed";
    if (still_holds(signature, now)) return "the workbook is what was signed";
    if (!signature.of.parts.empty()) {
        const std::vector<std::string> changed = changed_kinds(signature.of.parts, now.parts);
        return "changed since: " + (changed.empty() ? "the fingerprint itself" : joined(changed, "; "));
    }
    const std::vector<std::string> changed = changed_sheets(signature, now);
    return "changed since: " +
           (changed.empty() ? "defined names, or the order of the sheets" : joined(changed));
}

namespace {

/// A name in a list that is parted by `;`.
std::string escaped(const std::string& name) {
    std::string text;
    for (const char c : name) text += c == '%' ? "%25" : c == ';' ? "%3B" : std::string(1, c);
    return text;
}

std::string unescaped(std::string text) {
    for (const auto& [code, sign] : {std::pair("%3B", ";"), std::pair("%25", "%")})
        for (std::size_t at = 0; (at = text.find(code, at)) != std::string::npos; ++at)
            text.replace(at, 3, sign);
    return text;
}

}  // namespace

std::string text_of_parts(const Fingerprint& fingerprint) {
    std::string text;
    for (const FingerprintPart& part : fingerprint.parts)
        text += (text.empty() ? "" : ";") + part.digest + "|" + part.kind + "|" + escaped(part.sheet);
    return text;
}

std::vector<FingerprintPart> parts_of_text(std::string_view text) {
    std::vector<FingerprintPart> parts;
    for (const std::string& line : split(text, ';')) {
        const std::size_t first = line.find('|');
        const std::size_t second = first == std::string::npos ? first : line.find('|', first + 1);
        if (second == std::string::npos) continue;
        parts.push_back({line.substr(first + 1, second - first - 1), unescaped(line.substr(second + 1)),
                         line.substr(0, first)});
    }
    return parts;
}

}  // namespace undercroft::audit
