#include "tests/office/main_thread.hpp"

#include <com/sun/star/awt/AsyncCallback.hpp>
#include <com/sun/star/awt/XCallback.hpp>
#include <cppuhelper/implbase1.hxx>
#include <rtl/ref.hxx>

#include <chrono>
#include <exception>
#include <future>
#include <stdexcept>

namespace undercroft::tests {

namespace {

/// Called by the office's main thread, which waits for it: what it calls in turn is done by that thread.
class Callback final : public cppu::WeakImplHelper1<css::awt::XCallback> {
public:
    explicit Callback(const std::function<void()>& work) : work_(work) {}

    void SAL_CALL notify(const css::uno::Any&) override {
        try {
            work_();
            done_.set_value();
        } catch (...) {
            done_.set_exception(std::current_exception());
        }
    }
    std::future<void> done() { return done_.get_future(); }

private:
    const std::function<void()>& work_;
    std::promise<void> done_;
};

}  // namespace

void in_main_thread(const sheets::Office& office, const std::function<void()>& work) {
    const rtl::Reference<Callback> callback(new Callback(work));
    std::future<void> done = callback->done();
    css::awt::AsyncCallback::create(office.context())->addCallback(callback.get(), {});
    constexpr std::chrono::milliseconds between_looks(100);
    constexpr std::chrono::seconds patience(10);  // for the work to notice that the office is gone
    while (done.wait_for(between_looks) == std::future_status::timeout)
        if (office.has_ended() && done.wait_for(patience) == std::future_status::timeout)
            throw std::runtime_error(office.why_it_ended());
    done.get();
}

}  // namespace undercroft::tests
