#include "addin/uno/kept_template.hpp"

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/configuration/theDefaultProvider.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/deployment/PackageInformationProvider.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <com/sun/star/util/DateTime.hpp>

#include <mutex>
#include <optional>

#include "addin/audit/book/book_json.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/uno/digest.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

std::string bytes_of(const Reference<css::uno::XComponentContext>& context, const rtl::OUString& url) {
    const auto files = css::ucb::SimpleFileAccess::create(context);
    const Reference<css::io::XInputStream> stream = files->openFileRead(url);
    css::uno::Sequence<sal_Int8> bytes;
    stream->readBytes(bytes, files->getSize(url));
    stream->closeInput();
    return {reinterpret_cast<const char*>(bytes.getConstArray()),
            static_cast<std::size_t>(bytes.getLength())};
}

/// What the package keeps of a template of that name, if it is of this file and of this office.
std::optional<audit::Book> from_package(const Reference<css::uno::XComponentContext>& context,
                                        const rtl::OUString& url) {
    const rtl::OUString folder =
        css::deployment::PackageInformationProvider::get(context)->getPackageLocation("undercroft.addin");
    const rtl::OUString name = url.copy(url.lastIndexOf('/') + 1);
    const rtl::OUString file = folder + "/read/" + name + ".json";
    if (folder.isEmpty() || !css::ucb::SimpleFileAccess::create(context)->exists(file)) return std::nullopt;
    audit::KeptBook kept = audit::kept_book_of(bytes_of(context, file));
    if (kept.office != office_words(context) || kept.digest != digest_of_file(context, url))
        return std::nullopt;
    return std::move(kept.book);
}

struct Kept {
    rtl::OUString url;
    sal_Int32 size = -1;
    css::util::DateTime time;
    std::shared_ptr<const audit::Book> book;
};

}  // namespace

std::string office_words(const Reference<css::uno::XComponentContext>& context) {
    css::uno::Sequence<Any> where(1);
    where.getArray()[0] <<=
        css::beans::NamedValue("nodepath", Any(rtl::OUString("/org.openoffice.Setup/Product")));
    const Reference<css::container::XNameAccess> product(
        css::configuration::theDefaultProvider::get(context)->createInstanceWithArguments(
            "com.sun.star.configuration.ConfigurationAccess", where),
        UNO_QUERY_THROW);
    rtl::OUString office;
    product->getByName("ooSetupVersionAboutBox") >>= office;
    return "office " + to_string(office) + ", functions " + version();
}

std::string digest_of_file(const Reference<css::uno::XComponentContext>& context, const rtl::OUString& url) {
    return office_digest(context)(bytes_of(context, url));
}

std::shared_ptr<const audit::Book> kept_template(
    const css::uno::Reference<css::uno::XComponentContext>& context, const rtl::OUString& url,
    const std::function<audit::Book()>& read) {
    static std::mutex mutex;
    static Kept kept;
    const auto files = css::ucb::SimpleFileAccess::create(context);
    const sal_Int32 size = files->getSize(url);
    const css::util::DateTime time = files->getDateTimeModified(url);
    {
        const std::lock_guard lock(mutex);
        if (kept.book && kept.url == url && kept.size == size && kept.time == time) return kept.book;
    }
    std::optional<audit::Book> packed;
    try {
        packed = from_package(context, url);
    } catch (const std::exception&) {  // a package that somebody changed: the template itself is there
    } catch (const css::uno::Exception&) {
    }
    auto book = std::make_shared<const audit::Book>(packed ? std::move(*packed) : read());
    const std::lock_guard lock(mutex);
    kept = {url, size, time, book};
    return book;
}

}  // namespace undercroft::addin
