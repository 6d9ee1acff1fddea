using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Record.Plans;

/// <summary>What a plan needs in lime.</summary>
internal static class LimeAnswers
{
    internal static void Record(Action<string, object?> add, LimeAnswer lime)
    {
        add("lime.target", lime.TargetPh);
        add("lime.reading", lime.Computed?.Reading);
        Rate(add, "lime.need.gross", lime.Computed?.Gross);
        Rate(add, "lime.need", lime.Computed?.Rate);
        Rate(add, "lime.need.rounded", lime.Computed?.Published);
        Rate(add, "lime.need.low", lime.Computed?.Lowest);
        Rate(add, "lime.need.high", lime.Computed?.Highest);
        add("lime.depth", lime.Rate.OrNull()?.Depth);
        add("lime.basis", lime.Rate.OrNull()?.Basis.Id);
        Rate(add, "lime.printed", lime.Printed?.Rate);
        add("lime.printed.beside", lime.Check?.Computed);
        add("lime.printed.differs", lime.Check?.Differs);
        Weak(add, lime.WeaklyBuffered);
        Order(add, lime);
        Outlook(add, lime.Outlook.OrNull());
    }

    private static void Rate(Action<string, object?> add, string meaning, LimeRate? rate) => add(meaning, rate?.OfBasis);

    private static void Weak(Action<string, object?> add, WeaklyBufferedLime? weak)
    {
        if (weak is not null)
        {
            Rate(add, "lime.weak.low", weak.AdviceLow);
            Rate(add, "lime.weak.high", weak.AdviceHigh);
            Rate(add, "lime.weak.rule.low", weak.RuleLow);
            Rate(add, "lime.weak.rule.high", weak.RuleHigh);
            Rate(add, "lime.weak.first", weak.FirstDressing);
        }
    }

    private static void Order(Action<string, object?> add, LimeAnswer lime)
    {
        Rate(add, "lime.used", lime.Rate.OrNull());
        add("lime.product", lime.Offer?.Item.Name);
        if (lime.Order.OrNull() is { } order)
        {
            add("lime.per.basis", order.ProductPerBasis);
            add("lime.rate", order.ProductRate);
            add("lime.weight", order.Product);
            add("lime.first", order.Dressings.IsEmpty ? null : order.Dressings[0].Mass);
            add("lime.dressings", order.Dressings.Length);
            add("lime.last.on", order.Dressings.IsEmpty ? null : order.Dressings[^1].On);
            add("lime.packages", order.Bags);
            add("lime.cost", order.Cost);
            add("lime.magnesium", order.Magnesium);
        }
    }

    private static void Outlook(Action<string, object?> add, LimeOutlook? outlook)
    {
        if (outlook is not null)
        {
            add("lime.worked.low", outlook.Worked.Low);
            add("lime.worked.high", outlook.Worked.High);
            add("lime.year.low", outlook.WorkedInAYear.Low);
            add("lime.year.high", outlook.WorkedInAYear.High);
            add("lime.ph.low", outlook.ExpectedPhLow);
            add("lime.ph.high", outlook.ExpectedPhHigh);
            add("lime.hold.back", PlanAnswers.Ids(outlook.HoldBack));
            add("lime.sow.now", PlanAnswers.Ids(outlook.SowNow));
            add("lime.retest", outlook.RetestOn);
        }
    }
}
