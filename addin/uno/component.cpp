// The UNO component: one method a function of the catalogue, all generated; each reads its arguments,
// calls the catalogue, and turns a refusal into the cell error of its cause.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/supportsservice.hxx>

#include <array>
#include <boost/algorithm/string/replace.hpp>
#include <initializer_list>
#include <optional>

#include <undercroft/XUC.hpp>

#include "addin/catalogue/catalogue.hpp"
#include "addin/uno/audit_job.hpp"
#include "addin/uno/commands.hpp"
#include "addin/uno/explain.hpp"
#include "addin/uno/marshal.hpp"
#include "addin/uno/whole_table.hpp"

namespace undercroft::addin {

namespace {

constexpr std::size_t most_arguments = 16;

class Component final : public cppu::WeakImplHelper2<undercroft::XUC, css::lang::XServiceInfo> {
public:
    explicit Component(const css::uno::Reference<css::uno::XComponentContext>& context) : context_(context) {}

#include "stubs.inc"

    rtl::OUString SAL_CALL getImplementationName() override {
        return "undercroft.addin.Component";
    }
    sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override {
        return cppu::supportsService(this, name);
    }
    css::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override {
        css::uno::Sequence<rtl::OUString> names(1);
        names.getArray()[0] = to_oustring(service_name);
        return names;
    }

private:
    static css::uno::Any run(std::size_t index, std::initializer_list<const css::uno::Any*> values = {}) {
        try {
            std::array<Cell, most_arguments> cells;
            std::array<std::optional<SequenceGrid>, most_arguments> grids;
            std::size_t i = 0;
            for (const css::uno::Any* value : values) {
                cells.at(i) = to_cell(*value, grids.at(i));
                ++i;
            }
            return to_any(all_functions()[index].call(Cells(cells.data(), i)));
        } catch (const Refused& refused) {
            return error_value(refused.cause());
        } catch (const std::exception&) {
            return error_value(Cause::value);
        }
    }

    static Cell to_cell(const css::uno::Any& value, std::optional<SequenceGrid>& grid) {
        switch (value.getValueTypeClass()) {
            case css::uno::TypeClass_VOID:
                return std::monostate{};
            case css::uno::TypeClass_DOUBLE:
                return *static_cast<const double*>(value.getValue());
            case css::uno::TypeClass_STRING:
                return view(*static_cast<const rtl::OUString*>(value.getValue()));
            case css::uno::TypeClass_SEQUENCE:
                if (value.getValueType() == cppu::UnoType<AnyRows>::get()) {
                    grid.emplace(*static_cast<const AnyRows*>(value.getValue()));
                    return static_cast<const Grid*>(&*grid);
                }
                break;
            default:
                break;
        }
        const Scalar scalar = to_scalar(value);
        if (const double* number = std::get_if<double>(&scalar)) return *number;
        refuse_value("an argument of a kind that Calc does not hand over");
    }

    css::uno::Any whole(const css::uno::Reference<css::beans::XPropertySet>& document,
                        const css::uno::Reference<css::table::XCellRange>& table) const {
        try {
            return css::uno::Any(extent_of(context_, document, table).is_whole ? 1.0 : 0.0);
        } catch (const Refused& refused) {
            return error_value(refused.cause());
        }
    }

    css::uno::Any read_cell(std::size_t index, const css::uno::Reference<css::beans::XPropertySet>& document,
                            const css::uno::Reference<css::table::XCellRange>& cell) const {
        try {
            if (!document.is() || !cell.is()) return error_value(Cause::value);
            const Shape asked = all_functions()[index].outcome.type.shape;
            if (asked == Shape::verdict) return whole(document, cell);
            const Explanation explanation = explain(context_, document, cell);
            // One line: of several a cell shows the last only, unless somebody has set it to wrap.
            if (asked == Shape::text)
                return to_any(boost::algorithm::replace_all_copy(explanation.text, "\n", " | "));
            return to_any(steps_table(explanation));
        } catch (const std::exception& error) {
            return css::uno::Any(to_oustring(std::string("cannot be explained: ") + error.what()));
        } catch (const css::uno::Exception& error) {
            return css::uno::Any(to_oustring("cannot be explained: ") + error.Message);
        }
    }

    css::uno::Reference<css::uno::XComponentContext> context_;
};

}  // namespace

}  // namespace undercroft::addin

// The entry points of the library, one for each implementation that the package registers.
extern "C" SAL_DLLPUBLIC_EXPORT css::uno::XInterface* undercroft_audit(
    css::uno::XComponentContext* context, const css::uno::Sequence<css::uno::Any>&) {
    return undercroft::addin::make_audit_job(context);
}
extern "C" SAL_DLLPUBLIC_EXPORT css::uno::XInterface* undercroft_commands(
    css::uno::XComponentContext* context, const css::uno::Sequence<css::uno::Any>&) {
    return undercroft::addin::make_commands(context);
}
extern "C" SAL_DLLPUBLIC_EXPORT css::uno::XInterface* undercroft_component(
    css::uno::XComponentContext* context, const css::uno::Sequence<css::uno::Any>&) {
    return cppu::acquire(new undercroft::addin::Component(context));
}
