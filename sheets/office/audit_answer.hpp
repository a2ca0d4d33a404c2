/// \file audit_answer.hpp
/// A question to the audit of the extension, which runs in the office.
#pragma once

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/task/XJob.hpp>

#include <algorithm>
#include <stdexcept>
#include <vector>

#include "sheets/office/office.hpp"

namespace undercroft::sheets {

/// What the component's audit (addin/uno/audit_job.hpp) answers.
class AuditAnswer {
public:
    AuditAnswer(const Office& office, const std::vector<css::beans::NamedValue>& asked) {
        const css::uno::Reference<css::task::XJob> job(
            office.context()->getServiceManager()->createInstanceWithContext("undercroft.Audit",
                                                                             office.context()),
            css::uno::UNO_QUERY_THROW);
        css::uno::Sequence<css::beans::NamedValue> arguments(static_cast<sal_Int32>(asked.size()));
        std::copy(asked.begin(), asked.end(), arguments.getArray());
        job->execute(arguments) >>= parts_;
    }
    template <class T>
    [[nodiscard]] T get(const char* name) const {
        T value{};
        for (const css::beans::NamedValue& part : parts_)
            if (part.Name.equalsAscii(name) && (part.Value >>= value)) return value;
        throw std::runtime_error("the audit gave no answer");
    }

private:
    css::uno::Sequence<css::beans::NamedValue> parts_;
};

}  // namespace undercroft::sheets
