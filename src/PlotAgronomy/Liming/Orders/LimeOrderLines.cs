using System.Collections.Immutable;

namespace PlotAgronomy.Liming;

/// <summary>The lines of an order's sum.</summary>
internal static class LimeOrderLines
{
    internal static ImmutableArray<WorkedLine> Of(LimeOrder order)
    {
        var terms = order.Terms;
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        lines.Add(new("Rate", "with its labels", terms.Rate.ToString(), terms.Rate.Basis.SourceId));
        if (terms.EarlierLime?.CreditBy(terms.Rate.Institution, terms.SoilClass) is { } credit)
        {
            lines.Add(
                new(
                    "Earlier lime taken off",
                    "R - R x months x k, never below 0",
                    $"{LimeText.Tons(credit.PoundsPerAcre)} ton/ac",
                    "LIME-S7"
                )
            );
        }

        double from = terms.Rate.Depth.Inches;
        double to = order.BasisRate.Depth.Inches;
        if (!Tolerance.AreEqual(to, from))
        {
            lines.Add(
                new(
                    "For the depth worked",
                    "rate x depth worked / depth of the rate",
                    $"x {Amounts.Print(to, 2)} / {Amounts.Print(from, 2)} = "
                        + $"{LimeText.Tons(order.BasisRate.OfBasis.PoundsPerAcre)} ton/ac",
                    "PRACTICE"
                )
            );
        }

        lines.Add(
            new(
                $"Rate of {terms.Material.Name}",
                "rate x strength of its lime / strength of the material",
                $"{LimeText.Tons(order.BasisRate.OfBasis.PoundsPerAcre)} x {Amounts.Print(order.ProductPerBasis, 4)} = "
                    + $"{LimeText.Tons(order.ExactProductRate.PoundsPerAcre)} ton/ac = "
                    + $"{Amounts.Print(order.ExactProductRate.PoundsPerThousandSquareFeet, 1)} lb/1000 ft2",
                terms.Rate.Basis.Figure?.Index.SourceId
            )
        );
        if (terms.Rounding is { } rounding)
        {
            lines.Add(
                new(
                    "Rounded",
                    $"to {Amounts.Print(rounding.Step, "ton/ac")} as {rounding.Institution} does",
                    $"{LimeText.Tons(order.ProductRate.PoundsPerAcre)} ton/ac",
                    rounding.SourceId
                )
            );
        }

        double applied = order.AlreadyApplied.Pounds;
        if (applied > 0)
        {
            lines.Add(new("Already applied", "counted in this material", Amounts.Print(order.AlreadyApplied, "lb", 1)));
        }

        string less = applied > 0 ? " - " + Amounts.Print(order.AlreadyApplied, "lb", 1) : "";
        lines.Add(
            new(
                "For the plot",
                applied > 0 ? "rate x area - already applied" : "rate x area",
                $"{Amounts.Print(order.ProductRate, "lb/ac", 1)} x {Amounts.Print(terms.Area, "ac", 3)}{less} = "
                    + $"{Amounts.Print(order.Product, "lb", 1)} = {Amounts.Print(order.Product, "ton", 3)}"
            )
        );
        if (order.Bags is { } bags)
        {
            lines.Add(
                new(
                    "Whole bags",
                    "mass / bag, rounded up",
                    $"{Amounts.Print(bags, 0)} bags of {Amounts.Print(terms.Bag!.Value, "lb", 1)}"
                )
            );
        }

        foreach (var part in order.Dressings.Where(_ => order.Dressings.Length > 1))
        {
            string when = part.On is { } day
                ? day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
                : $"month {Amounts.Print(part.MonthsAfterFirst, 0)}";
            lines.Add(
                new(
                    $"Dressing {Amounts.Print(part.Number, 0)}",
                    "the last part takes the rest",
                    $"{when}: {Amounts.Print(part.Mass, "lb", 1)}{(part.Bags is { } b ? $", {Amounts.Print(b, 0)} bags" : "")}"
                )
            );
        }

        return lines.ToImmutable();
    }
}
