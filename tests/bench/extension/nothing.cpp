// An add-in function that takes what ours takes and does nothing: the floor.
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/supportsservice.hxx>
#include <undercroftbench/XMass.hpp>

namespace css = com::sun::star;

namespace {

class Nothing final : public cppu::WeakImplHelper2<undercroftbench::XMass, css::lang::XServiceInfo> {
public:
    css::uno::Any SAL_CALL mass(const css::uno::Any&, const css::uno::Any&, const css::uno::Any&,
                                const css::uno::Any&) override {
        return css::uno::Any(1.0);
    }
    rtl::OUString SAL_CALL getImplementationName() override { return "undercroftbench.NothingComponent"; }
    sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override {
        return cppu::supportsService(this, name);
    }
    css::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override {
        css::uno::Sequence<rtl::OUString> names(1);
        names.getArray()[0] = "undercroftbench.Nothing";
        return names;
    }
};

}  // namespace

extern "C" SAL_DLLPUBLIC_EXPORT css::uno::XInterface* undercroftbench_nothing(
    css::uno::XComponentContext*, const css::uno::Sequence<css::uno::Any>&) {
    return cppu::acquire(new Nothing);
}
