/// \file audit_job.hpp
/// The audit as a job of the office, for programs that drive it from outside.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>

namespace undercroft::addin {

inline constexpr const char* audit_job_name = "undercroft.addin.AuditJob";

/// Service `undercroft.Audit`, a com.sun.star.task.Job. Arguments: Document (the spreadsheet), File (where it
/// was just read from), Against (the template), Since (an earlier revision), Writes (whether it writes the
/// sheet Audit), Table and Json (whether those texts are wanted). Returns a sequence of named values:
/// Findings (number of those not accepted), Text (for a console), Table (as .csv), Json. With Template (an
/// address) alone: AsRead, for the package to keep.
[[nodiscard]] com::sun::star::uno::XInterface* make_audit_job(
    const com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>& context);

}  // namespace undercroft::addin
