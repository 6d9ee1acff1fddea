using PlotAgronomy.Liming;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>Lime from before the sample, aged from its spreading to the day of sampling.</summary>
internal sealed class EarlierLimeShape : PlanShape<EarlierLime, PlotPlan>
{
    /// <param name="sampled">Field of the report around it: the day of sampling.</param>
    internal EarlierLimeShape(PlanField<DateOnly> sampled)
        : base("earlierLime", "Lime spread before this sample was taken.")
    {
        var rate = Required("rate", Rate("1 ton/ac"), "Rate spread.", p => p.EarlierLime!.Rate);
        var spread = Required("spread", Since, "Day it was spread.", p => p.ReportOrNone.SampledOn?.AddDays(-Days(p)));
        Unsaid("earlier lime whose age is no whole number of days", p => Months(Days(p)) != p.EarlierLime!.Months);

        ReadAs(at =>
        {
            if (!at.Around.Has(sampled))
            {
                throw at.Report(spread, "its age is counted to the day of sampling, and 'sampled' is missing");
            }

            int days = at.Around.Get(sampled).DayNumber - at.Get(spread).DayNumber;
            return days >= 0
                ? at.Try(rate, () => EarlierLime.FromRate(at.Get(rate), Months(days)))
                : throw at.Report(
                    spread,
                    "earlier lime was spread before the sample was taken; lime spread since then belongs to the records"
                );
        });
    }

    private static double Months(int days) => days / ExactUnits.DaysPerMonth;

    private static int Days(PlotPlan plan) =>
        (int)Math.Round(plan.EarlierLime!.Months * ExactUnits.DaysPerMonth, MidpointRounding.AwayFromZero);
}
