#include "sheets/builder/fods_cell.hpp"

#include <map>
#include <sstream>

#include "units/text.hpp"

namespace undercroft::sheets {

namespace {

void add_paragraphs(xml_node cell, const std::string& text) {
    std::istringstream lines(text);
    std::string line;
    while (std::getline(lines, line)) cell.append_child("text:p").text().set(line.c_str());
}

/// A symbol as it is written by hand: `rho_s` as a Greek letter with its index lowered.
void add_symbol(xml_node cell, const std::string& text) {
    static const std::map<std::string, const char*> greek = {{"rho", "ρ"},   {"mu", "μ"},    {"phi", "φ"},
                                                             {"gamma", "γ"}, {"sigma", "σ"}, {"delta", "δ"}};
    xml_node paragraph = cell.append_child("text:p");
    std::string word;
    bool lowered = false;
    const auto flush = [&] {
        if (word.empty()) return;
        const auto letter = greek.find(word);
        const std::string shown = letter == greek.end() ? word : letter->second;
        if (lowered) {
            xml_node span = paragraph.append_child("text:span");
            set(span, "text:style-name", "Lowered");
            span.text().set(shown.c_str());
        } else {
            paragraph.append_child(pugi::node_pcdata).set_value(shown.c_str());
        }
        word.clear();
    };
    for (const char c : text) {
        const bool in_word = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ||
                             static_cast<unsigned char>(c) >= 0x80;
        if (in_word) {
            word += c;
            continue;
        }
        const bool index_follows = c == '_' && !word.empty();
        flush();
        lowered = index_follows;
        if (c == ' ')
            paragraph.append_child("text:s");
        else if (!index_follows)
            paragraph.append_child(pugi::node_pcdata).set_value(std::string(1, c).c_str());
    }
    flush();
}

}  // namespace

void write_cell(xml_node row, const SheetCell& cell) {
    xml_node made = row.append_child("table:table-cell");
    if (!cell.style.empty()) set(made, "table:style-name", cell.style);
    if (!cell.validation.empty()) set(made, "table:content-validation-name", cell.validation);
    if (cell.columns > 1) {
        set(made, "table:number-columns-spanned", std::to_string(cell.columns));
        set(made, "table:number-rows-spanned", "1");
    }
    switch (cell.type) {
        case SheetCell::Type::blank:
            break;
        case SheetCell::Type::number:
            set(made, "office:value-type", "float");
            set(made, "office:value", exact_text(cell.number));  // of a day too: its style shows it as one
            break;
        case SheetCell::Type::text:
            set(made, "office:value-type", "string");
            if (cell.style == "Symbol" || cell.style == "Note")
                add_symbol(made, cell.text);
            else
                add_paragraphs(made, cell.text);
            break;
        case SheetCell::Type::formula:
            if (cell.matrix_rows > 0) {
                set(made, "table:number-matrix-rows-spanned", std::to_string(cell.matrix_rows));
                set(made, "table:number-matrix-columns-spanned", std::to_string(cell.matrix_columns));
            }
            set(made, "table:formula", cell.text);
            break;
    }
}

}  // namespace undercroft::sheets
