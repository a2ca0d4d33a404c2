#include "addin/uno/audit_job.hpp"

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/task/XJob.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/supportsservice.hxx>

#include "addin/uno/audit_document.hpp"
#include "addin/uno/audit_record.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;

namespace {

class AuditJob final : public cppu::WeakImplHelper2<css::task::XJob, css::lang::XServiceInfo> {
public:
    explicit AuditJob(const Reference<css::uno::XComponentContext>& context) : context_(context) {}

    Any SAL_CALL execute(const css::uno::Sequence<css::beans::NamedValue>& arguments) override {
        AuditWanted wanted;
        bool signatures_only = false;
        bool wants_table = true;
        bool wants_json = true;
        rtl::OUString read;
        for (const css::beans::NamedValue& argument : arguments) {
            if (argument.Name == "Document") wanted.document.set(argument.Value, UNO_QUERY);
            if (argument.Name == "File") argument.Value >>= wanted.file;
            if (argument.Name == "Against") argument.Value >>= wanted.against;
            if (argument.Name == "Since") argument.Value >>= wanted.since;
            if (argument.Name == "Writes") argument.Value >>= wanted.writes_sheet;
            if (argument.Name == "Table") argument.Value >>= wants_table;
            if (argument.Name == "Json") argument.Value >>= wants_json;
            if (argument.Name == "Template") argument.Value >>= read;
            if (argument.Name == "SignaturesOnly") argument.Value >>= signatures_only;
        }
        if (!read.isEmpty()) {
            css::uno::Sequence<css::beans::NamedValue> answer(1);
            answer.getArray()[0] = {"AsRead", Any(to_oustring(template_as_read(context_, read)))};
            return Any(answer);
        }
        if (!wanted.document.is())
            throw css::lang::IllegalArgumentException("Document must be an open spreadsheet", *this, 0);
        if (signatures_only) {
            css::uno::Sequence<css::beans::NamedValue> answer(1);
            answer.getArray()[0] = {
                "Signatures",
                Any(static_cast<sal_Int32>(read_audit_record(wanted.document).signatures.size()))};
            return Any(answer);
        }
        try {
            const audit::Report report = audit_document(context_, wanted);
            css::uno::Sequence<css::beans::NamedValue> answer(4);
            answer.getArray()[0] = {
                "Findings", Any(static_cast<sal_Int32>(report.findings.size() - report.counts.accepted))};
            answer.getArray()[1] = {"Text", Any(to_oustring(audit::console_text(report)))};
            answer.getArray()[2] = {
                "Table", Any(wants_table ? to_oustring(audit::csv_text(report)) : rtl::OUString())};
            answer.getArray()[3] = {
                "Json", Any(wants_json ? to_oustring(audit::json_text(report)) : rtl::OUString())};
            return Any(answer);
        } catch (const std::exception& error) {
            throw css::uno::RuntimeException(to_oustring(error.what()), *this);
        }
    }

    rtl::OUString SAL_CALL getImplementationName() override { return to_oustring(audit_job_name); }
    sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override {
        return cppu::supportsService(this, name);
    }
    css::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override {
        css::uno::Sequence<rtl::OUString> names(1);
        names.getArray()[0] = "undercroft.Audit";
        return names;
    }

private:
    Reference<css::uno::XComponentContext> context_;
};

}  // namespace

css::uno::XInterface* make_audit_job(const Reference<css::uno::XComponentContext>& context) {
    return cppu::acquire(new AuditJob(context));
}

}  // namespace undercroft::addin
