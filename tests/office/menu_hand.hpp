/// \file menu_hand.hpp
/// A hand that selects a cell of an open workbook and picks an entry of the menu.
#pragma once

#include <com/sun/star/frame/XNotifyingDispatch.hpp>

#include <string>

#include "sheets/office/office.hpp"

namespace undercroft::tests {

class MenuHand {
public:
    MenuHand(const sheets::Office& office, const sheets::Document& document);

    /// Selects cells, such as `B7` or `B7:B12`.
    void select(const std::string& sheet, const std::string& cells) const;
    /// Picks the entry with this command. \return what a box would say; nothing where it was done without a
    /// word
    [[nodiscard]] std::string pick(const std::string& command) const;
    /// The selected cell: `Flow.B7`.
    [[nodiscard]] std::string selected() const;
    /// Edit > Undo, once.
    void undo() const;
    /// What Edit > Undo would take back.
    [[nodiscard]] std::string undoes() const;

private:
    const sheets::Office& office_;
    const sheets::Document& document_;
    css::uno::Reference<css::frame::XNotifyingDispatch> commands_;
};

}  // namespace undercroft::tests
