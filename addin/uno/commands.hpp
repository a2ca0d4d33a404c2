/// \file commands.hpp
/// What the menu and the toolbar of the extension do.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>
#include <com/sun/star/uno/XInterface.hpp>

namespace undercroft::addin {

/// Implementation name of the handler of `undercroft:` commands, as the package registers it.
inline constexpr const char* commands_name = "undercroft.addin.Commands";

/// The handler: `undercroft:new/storage-us` opens a template, `undercroft:audit` audits,
/// `undercroft:compare` asks for an earlier revision first, `undercroft:confirm`
/// confirms the inputs of the selected rows, `undercroft:add-row` and `undercroft:remove-row` change the list
/// under the cursor, `undercroft:next-open` goes on to what is still to be done, `undercroft:functions` shows
/// the reference of all functions, `undercroft:about` says what this is.
[[nodiscard]] com::sun::star::uno::XInterface* make_commands(
    const com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>& context);

}  // namespace undercroft::addin
