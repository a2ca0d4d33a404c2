/// \file writers.hpp
/// What is generated from the catalogue: one writer a file.
#pragma once

#include <string>

namespace undercroft::addin {

/// The UNO interface and service, for unoidl-write.
[[nodiscard]] std::string interface_idl();
/// Names, descriptions and arguments as Calc shows them.
[[nodiscard]] std::string calc_registration();
/// One C++ method a function, for the component.
[[nodiscard]] std::string component_stubs();
/// The reference of all functions.
[[nodiscard]] std::string functions_reference();
/// The same as a page that the office's menu opens.
[[nodiscard]] std::string functions_page();
/// Names and signatures as files store them: the list that only grows.
[[nodiscard]] std::string stored_names();

/// Text made safe inside XML.
[[nodiscard]] std::string xml_escaped(const std::string& text);

}  // namespace undercroft::addin
