#include "sheets/builder/compose.hpp"

#include "addin/properties.hpp"
#include "sheets/builder/fill.hpp"
#include "sheets/builder/helper_columns.hpp"
#include "sheets/builder/pages.hpp"

namespace undercroft::sheets {

namespace {

SheetGrid blank_grid(const Sheet& sheet, int rows) {
    SheetGrid grid;
    grid.name = sheet.name;
    grid.wide = sheet.wide;
    grid.printed = !sheet.unprinted;
    grid.print_columns = mark_column(sheet) + 1;
    grid.head_rows = first_row;
    grid.rows = rows;
    grid.row_cm = row_cm;
    grid.column_widths_cm.assign(static_cast<std::size_t>(last_column(sheet) + 1), column_cm);
    grid.column_widths_cm[ref_column] = 0.94;
    grid.column_widths_cm.push_back(0.5);  // marks
    grid.column_widths_cm.push_back(11);   // reasons, beside the printed page
    grid.column_widths_cm.insert(grid.column_widths_cm.end(), helper_columns, column_cm);
    grid.hidden_from = helper_column(sheet, first_kept);
    return grid;
}

/// Its identity as a template, which every workbook made from it keeps.
std::vector<std::pair<std::string, std::string>> properties_of(const WorkbookText& text, System system) {
    return {{std::string(audit::template_property), text.name},
            {std::string(audit::system_property), system == System::us ? "US" : "SI"},
            {std::string(audit::template_version_property), UNDERCROFT_VERSION},
            {std::string(audit::functions_property), UNDERCROFT_VERSION}};
}

/// The sheets with the reading of their words for one system.
std::vector<Sheet> worded_for(System system, std::vector<Sheet> sheets) {
    for (Sheet& sheet : sheets)
        for (Row& row : sheet.rows) {
            row.description = dual(row.description).in(system);
            row.note = dual(row.note).in(system);
        }
    return sheets;
}

}  // namespace

WorkbookGrid compose(const WorkbookText& text, const std::vector<Sheet>& all, System system) {
    const std::vector<Sheet> sheets = worded_for(system, all);
    const Selection selection(text, sheets, system);
    const Layout layout(selection, system);
    WorkbookGrid workbook;
    workbook.name = text.name + (system == System::us ? "-us" : "");
    workbook.title = text.title + (system == System::us ? " (US customary units)" : "");
    workbook.paper = system == System::us ? "letter" : "a4";
    workbook.properties = properties_of(text, system);
    workbook.names = layout.names();
    for (const Sheet& sheet : selection.sheets()) {
        SheetGrid grid = blank_grid(sheet, layout.height_of(sheet));
        CellWriter writer(workbook, grid, layout, sheet, system);
        for (const Row& row : sheet.rows) fill_row(writer, selection, row);
        fill_head(writer);
        begin_pages(grid, sheet, layout, system == System::us);
        workbook.sheets.push_back(std::move(grid));
    }
    return workbook;
}

}  // namespace undercroft::sheets
