using System.Runtime.CompilerServices;
using Estimator.Engine.Payments;
using Estimator.Web.Jobs;

namespace Estimator.Web.Contracts;

/// <summary>The payment plan of a priced job, worked out once.</summary>
internal static class PaymentTermsOf
{
    private static readonly ConditionalWeakTable<PricedJob, PaymentPlan> Known = [];

    internal static PaymentPlan Plan(PricedJob priced) => Known.GetValue(priced, static p => PaymentPlanning.Compute(p.Estimate, p.Catalogue.Parts));
}
