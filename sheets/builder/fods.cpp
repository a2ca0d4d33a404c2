// A workbook of cells as a flat OpenDocument spreadsheet (OASIS OpenDocument 1.3), by pugixml.
#include <boost/algorithm/string/join.hpp>
#include <sstream>

#include "sheets/builder/fods_sheet.hpp"
#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/grid.hpp"
#include "sheets/builder/page_styles.hpp"
#include "sheets/builder/styles.hpp"

namespace undercroft::sheets {

namespace {

xml_node document_node(pugi::xml_document& file) {
    xml_node document = file.append_child("office:document");
    const std::pair<const char*, const char*> spaces[] = {
        {"office", "urn:oasis:names:tc:opendocument:xmlns:office:1.0"},
        {"style", "urn:oasis:names:tc:opendocument:xmlns:style:1.0"},
        {"text", "urn:oasis:names:tc:opendocument:xmlns:text:1.0"},
        {"table", "urn:oasis:names:tc:opendocument:xmlns:table:1.0"},
        {"draw", "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0"},
        {"fo", "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"},
        {"svg", "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0"},
        {"chart", "urn:oasis:names:tc:opendocument:xmlns:chart:1.0"},
        {"number", "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0"},
        {"meta", "urn:oasis:names:tc:opendocument:xmlns:meta:1.0"},
        {"config", "urn:oasis:names:tc:opendocument:xmlns:config:1.0"},
        {"of", "urn:oasis:names:tc:opendocument:xmlns:of:1.2"},
        {"xlink", "http://www.w3.org/1999/xlink"},
        {"dc", "http://purl.org/dc/elements/1.1/"},
        {"calcext", "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"},
    };
    for (const auto& [prefix, name] : spaces) set(document, (std::string("xmlns:") + prefix).c_str(), name);
    set(document, "office:version", "1.3");
    set(document, "office:mimetype", "application/vnd.oasis.opendocument.spreadsheet");
    return document;
}

void add_sheet_styles(xml_node automatic) {
    xml_node frame = add_style(automatic, "plainframe", "graphic");
    xml_node lines = frame.append_child("style:graphic-properties");
    set(lines, "draw:stroke", "none");
    set(lines, "draw:fill", "none");
    xml_node lowered = add_style(automatic, "Lowered", "text");
    set(lowered.append_child("style:text-properties"), "style:text-position", "sub 70%");
    for (const char* page : {"Upright", "Wide"}) {
        xml_node style = add_style(automatic, std::string("ta") + page, "table");
        set(style, "style:master-page-name", page);
        set(style.append_child("style:table-properties"), "table:display", "true");
    }
}

void write_validations(xml_node spreadsheet, const WorkbookGrid& workbook) {
    xml_node validations = spreadsheet.append_child("table:content-validations");
    for (const Validation& validation : workbook.validations) {
        xml_node made = validations.append_child("table:content-validation");
        set(made, "table:name", validation.name);
        if (!validation.choices.empty()) {
            std::vector<std::string> list;
            list.reserve(validation.choices.size());
            for (const std::string& choice : validation.choices) list.push_back(quoted(choice));
            set(made, "table:condition",
                "of:cell-content-is-in-list(" + boost::algorithm::join(list, ";") + ")");
            set(made, "table:allow-empty-cell", "true");
            set(made, "table:display-list", "unsorted");
        }
        if (validation.wants == Validation::Wants::number) {
            const std::string between =
                validation.least.empty() ? " and cell-content()>=-1E+300"  // the format wants some bound
                : validation.most.empty()
                    ? " and cell-content()>=" + validation.least
                    : " and cell-content-is-between(" + validation.least + "," + validation.most + ")";
            set(made, "table:condition", "of:cell-content-is-decimal-number()" + between);
            set(made, "table:allow-empty-cell", "true");
        }
        if (validation.wants == Validation::Wants::day) {
            set(made, "table:condition", "of:cell-content-is-date() and cell-content()>=1");
            set(made, "table:allow-empty-cell", "true");
        }
        set(made, "table:base-cell-address",
            validation.base.empty() ? workbook.sheets.front().name + ".A1" : validation.base);
        if (!validation.help.empty()) {
            xml_node help = made.append_child("table:help-message");
            set(help, "table:title", validation.help_title);
            set(help, "table:display", "true");
            help.append_child("text:p").text().set(validation.help.c_str());
        }
        if (validation.wants != Validation::Wants::anything) {
            const bool unit = validation.wants == Validation::Wants::unit;
            const bool choice = validation.wants == Validation::Wants::choice;
            const bool day = validation.wants == Validation::Wants::day;
            xml_node error = made.append_child("table:error-message");
            set(error, "table:message-type", unit ? "warning" : "stop");
            set(error, "table:display", "true");
            const std::string text =
                unit ? "This is not in the list. Another unit of the same kind is fine; anything else gives "
                       "an error."
                : choice                   ? "One of the list is wanted."
                : day                      ? "A day of the calendar is wanted: 2026-11-25."
                : validation.least.empty() ? "A number is wanted; its unit stands in a cell of its own."
                : validation.wanted.empty()
                    ? "A number of " + validation.least +
                          " or more is wanted; its unit stands in the cell to the right."
                    : "A number is wanted, " + validation.wanted +
                          "; its unit stands in the cell to the right.";
            error.append_child("text:p").text().set(text.c_str());
        }
    }
}

}  // namespace

std::string flat_document(const WorkbookGrid& workbook) {
    pugi::xml_document file;
    xml_node document = document_node(file);
    set(document, "xmlns:loext", "urn:org:documentfoundation:names:experimental:office:xmlns:loext:1.0");
    xml_node meta = document.append_child("office:meta");
    meta.append_child("dc:title").text().set(workbook.title.c_str());
    for (const auto& [name, value] : workbook.properties) {
        xml_node property = meta.append_child("meta:user-defined");
        set(property, "meta:name", name);
        set(property, "meta:value-type", "string");
        property.text().set(value.c_str());
    }
    add_styles(document.append_child("office:styles"));
    xml_node automatic = document.append_child("office:automatic-styles");
    xml_node master = document.append_child("office:master-styles");
    add_page_styles(automatic, master, workbook.paper == "letter");
    add_sheet_styles(automatic);
    Sizes sizes(automatic);
    xml_node spreadsheet = document.append_child("office:body").append_child("office:spreadsheet");
    write_validations(spreadsheet, workbook);
    // In a flat file a chart is read at once: the sheet that it takes its points from must stand before it.
    // The office then moves these sheets to the end (sheet_office --last).
    for (const bool printed : {false, true})
        for (const SheetGrid& sheet : workbook.sheets)
            if (sheet.printed == printed) write_sheet(spreadsheet, sheet, sizes);
    xml_node names = spreadsheet.append_child("table:named-expressions");
    for (const NamedRange& name : workbook.names) {
        xml_node made = names.append_child("table:named-range");
        set(made, "table:name", name.name);
        set(made, "table:base-cell-address", "$" + workbook.sheets.front().name + ".$A$1");
        set(made, "table:cell-range-address", name.address);
    }
    std::ostringstream text;
    file.save(text, " ", pugi::format_raw, pugi::encoding_utf8);
    return text.str();
}

}  // namespace undercroft::sheets
