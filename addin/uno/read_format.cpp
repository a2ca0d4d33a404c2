#include "addin/uno/read_format.hpp"

#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY;

namespace {

audit::ShownAs shown_as(sal_Int16 type) {
    if ((type & css::util::NumberFormat::DATE) != 0) return audit::ShownAs::date;
    if ((type & css::util::NumberFormat::TIME) != 0) return audit::ShownAs::time;
    if ((type & css::util::NumberFormat::PERCENT) != 0) return audit::ShownAs::percent;
    return audit::ShownAs::number;
}

/// What the office knows of the number format of cells; nothing where it knows none. The Calc of Debian 13
/// gives cells of a workbook that was saved in another country's office keys without a format, and refuses
/// them.
Reference<css::beans::XPropertySet> known_format(const Reference<css::beans::XPropertySet>& cells,
                                                 const Reference<css::util::XNumberFormats>& formats) {
    sal_Int32 key = 0;
    if (!cells.is() || !formats.is() || !(cells->getPropertyValue("NumberFormat") >>= key)) return {};
    try {
        return formats->getByKey(key);
    } catch (const css::uno::RuntimeException&) {
        return {};
    }
}

}  // namespace

Reference<css::util::XNumberFormats> number_formats_of(const Reference<css::uno::XInterface>& document) {
    const Reference<css::util::XNumberFormatsSupplier> supplier(document, UNO_QUERY);
    return supplier.is() ? supplier->getNumberFormats() : Reference<css::util::XNumberFormats>();
}

audit::NumberFormat number_format_of(const Reference<css::beans::XPropertySet>& cells,
                                     const Reference<css::util::XNumberFormats>& formats) {
    audit::NumberFormat format;
    const Reference<css::beans::XPropertySet> properties = known_format(cells, formats);
    if (!properties.is()) return format;
    sal_Int16 type = 0;
    rtl::OUString code;
    properties->getPropertyValue("Type") >>= type;
    properties->getPropertyValue("FormatString") >>= code;
    format.shown_as = shown_as(type);
    format.shows_time =
        format.shown_as == audit::ShownAs::date && (type & css::util::NumberFormat::TIME) != 0;
    const bool writes_number =
        (type & (css::util::NumberFormat::NUMBER | css::util::NumberFormat::DEFINED)) != 0;
    if (writes_number && format.shown_as == audit::ShownAs::number) {
        const std::string text = to_string(code);
        sal_Int16 decimals = -1;
        bool general = false;  // whatever that is called in the office's country
        properties->getPropertyValue("Decimals") >>= decimals;
        properties->getPropertyValue("StandardFormat") >>= general;
        if (!general) audit::read_format_code(text, format, decimals);
        if (text.find('"') != std::string::npos || text.find('\\') != std::string::npos)
            format.unit = audit::text_behind(text);
    }
    return format;
}

std::string format_words_of(const Reference<css::beans::XPropertySet>& cells,
                            const Reference<css::util::XNumberFormats>& formats) {
    const Reference<css::beans::XPropertySet> properties = known_format(cells, formats);
    if (!properties.is()) return {};
    sal_Int16 type = 0;
    rtl::OUString code;
    properties->getPropertyValue("Type") >>= type;
    properties->getPropertyValue("FormatString") >>= code;
    // Days and times have words of their country.
    const audit::ShownAs as = shown_as(type);
    const bool is_day = as == audit::ShownAs::date || as == audit::ShownAs::time;
    return is_day ? std::string() : audit::words_of_format(to_string(code));
}

}  // namespace undercroft::addin
