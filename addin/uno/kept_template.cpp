#include "addin/uno/kept_template.hpp"

#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <com/sun/star/util/DateTime.hpp>

#include <mutex>

namespace undercroft::addin {

namespace {

struct Kept {
    rtl::OUString url;
    sal_Int32 size = -1;
    css::util::DateTime time;
    std::shared_ptr<const audit::Book> book;
};

}  // namespace

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
    auto book = std::make_shared<const audit::Book>(read());
    const std::lock_guard lock(mutex);
    kept = {url, size, time, book};
    return book;
}

}  // namespace undercroft::addin
