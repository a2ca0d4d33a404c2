/// \file office.hpp
/// A headless Calc of our own: its profile is private and thrown away, our extension is in it, and nothing of
/// the person's own installation is touched. The demo, the batch tools and the tests work through it.
#pragma once

#include <com/sun/star/frame/XDesktop2.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>
#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "sheets/office/keeper.hpp"

namespace css = com::sun::star;

namespace undercroft::sheets {

[[nodiscard]] std::string to_utf8(const rtl::OUString& text);
[[nodiscard]] rtl::OUString to_ustring(const std::string& text);
[[nodiscard]] rtl::OUString file_url(const std::filesystem::path& path);

/// A spreadsheet that is open in the office. Closed when it goes.
class Document {
public:
    explicit Document(css::uno::Reference<css::sheet::XSpreadsheetDocument> document);
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;
    Document(Document&&) = default;
    ~Document();

    [[nodiscard]] css::uno::Reference<css::sheet::XSpreadsheetDocument> model() const { return document_; }
    [[nodiscard]] css::uno::Reference<css::sheet::XSpreadsheet> sheet(const std::string& name) const;
    [[nodiscard]] std::vector<std::string> sheet_names() const;

    /// A cell by sheet and address such as `B3`.
    [[nodiscard]] css::uno::Reference<css::table::XCell> cell(const std::string& sheet,
                                                              const std::string& address) const;
    /// The first cell of a defined name, or the one that many columns to its right and rows below.
    [[nodiscard]] css::uno::Reference<css::table::XCell> named(const std::string& name, int columns_right = 0,
                                                               int rows_below = 0) const;
    [[nodiscard]] bool has_name(const std::string& name) const;
    /// How many rows it has.
    [[nodiscard]] int rows_of(const std::string& name) const;

    /// Sets up the view that the file keeps: on each sheet these first rows stay in sight, no grid, the
    /// cursor on the first cell that is typed in, and the first sheet in front.
    void keep_rows_in_sight(int rows) const;
    /// Moves a sheet behind all others, where the workbook has it.
    void move_to_end(const std::string& sheet_name) const;
    /// Computes every cell anew.
    void recalculate() const;
    /// Saves a copy; the kind of file follows the ending: .ods, .ots, .fods, .xlsx, .pdf, .csv.
    void store(const std::filesystem::path& path) const;

private:
    css::uno::Reference<css::sheet::XSpreadsheetDocument> document_;
};

/// Whether a workbook can be saved as a file of this ending.
[[nodiscard]] bool can_be_saved(const std::filesystem::path& file);
[[nodiscard]] bool has_ending(const std::filesystem::path& file,
                              std::initializer_list<std::string_view> endings);

/// What a cell shows as text.
[[nodiscard]] std::string shown(const css::uno::Reference<css::table::XCell>& cell);

class Office {
public:
    enum class Screen { none, window };

    /// Starts the office with the extensions in `extensions`, one folder each.
    /// Its profile is new and thrown away, unless the folder of one is given, which is kept.
    /// \throws std::runtime_error when it does not answer within two minutes.
    explicit Office(const std::filesystem::path& extensions, const Limits& limits = {},
                    Screen screen = Screen::none, const std::filesystem::path& profile = {});
    Office(const Office&) = delete;
    Office& operator=(const Office&) = delete;
    ~Office();

    /// Opens a file; a template becomes a new document.
    /// \throws std::runtime_error when it cannot be opened as a spreadsheet.
    [[nodiscard]] Document open(const std::filesystem::path& path) const;
    /// A copy of the file, which is neither locked nor ever written.
    /// \throws std::runtime_error when it cannot be opened as a spreadsheet.
    [[nodiscard]] Document open_copy(const std::filesystem::path& path) const;
    /// A new, empty spreadsheet.
    [[nodiscard]] Document blank() const;

    [[nodiscard]] css::uno::Reference<css::uno::XComponentContext> context() const { return context_; }
    /// The process group of the office.
    [[nodiscard]] pid_t process() const { return keeper_->office(); }
    [[nodiscard]] const Keeper& keeper() const { return *keeper_; }
    [[nodiscard]] bool has_ended() const;
    /// Why the office is gone, as a sentence; empty while it is there.
    [[nodiscard]] std::string why_it_ended() const;

private:
    /// A new one where there is no path. \param stands_for is the file that it is a copy of
    [[nodiscard]] Document load(const std::filesystem::path& path,
                                const std::filesystem::path& stands_for = {}) const;
    [[nodiscard]] bool is_encrypted(const std::filesystem::path& path) const;

    Limits limits_;
    std::unique_ptr<Keeper> keeper_;
    css::uno::Reference<css::uno::XComponentContext> context_;
    css::uno::Reference<css::frame::XDesktop2> desktop_;
};

}  // namespace undercroft::sheets
