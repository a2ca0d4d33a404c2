#include "sheets/office/profile.hpp"

namespace undercroft::sheets {

namespace {

std::string item(const std::string& path, const std::string& name, const std::string& value) {
    return "<item oor:path=\"/org.openoffice." + path + "\"><prop oor:name=\"" + name +
           "\" oor:op=\"fuse\"><value>" + value + "</value></prop></item>\n";
}

}  // namespace

std::string profile_settings() {
    const std::string scripting = "Office.Common/Security/Scripting";
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<oor:items "
           "xmlns:oor=\"http://openoffice.org/2001/registry\" xmlns:xs=\"http://www.w3.org/2001/XMLSchema\" "
           "xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\">\n" +
           item(scripting, "BlockUntrustedRefererLinks", "true") +
           item(scripting, "DisableMacrosExecution", "true") + item(scripting, "MacroSecurityLevel", "3") +
           item("Office.Calc/Content/Update", "Link", "2") +  // never
           // To a port where nothing listens, for what asks in spite of that.
           item("Inet/Settings", "ooInetProxyType", "2") +
           item("Inet/Settings", "ooInetHTTPProxyName", "127.0.0.1") +
           item("Inet/Settings", "ooInetHTTPProxyPort", "9") +
           item("Inet/Settings", "ooInetHTTPSProxyName", "127.0.0.1") +
           item("Inet/Settings", "ooInetHTTPSProxyPort", "9") +
           // An office that takes itself for new tries out at each start how it draws: seven tenths of a
           // second.
           item("Setup/Product", "ooSetupLastVersion", "99.9") +
           item("Setup/L10N", "ooSetupSystemLocale", "en-US") + item("Setup/L10N", "ooLocale", "en-US") +
           "</oor:items>\n";
}

}  // namespace undercroft::sheets
