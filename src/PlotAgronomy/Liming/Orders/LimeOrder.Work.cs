using System.Collections.Immutable;

namespace PlotAgronomy.Liming;

/// <content>The working.</content>
public sealed partial class LimeOrder
{
    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        lines.Add(
            LimingFormulas.All["lime-as-labelled"].Line(Request.Rate.ToString(), ("what", "Rate")).From(Request.Rate.Basis.Origin)
        );
        string? stopped =
            LimeCautions.IsAtTarget(Request.Soil, Request.Rate) ? "The soil is at the pH aimed at"
            : LimeCautions.IsCausticNearSeed(Request) ? "Caustic lime near the seed"
            : null;
        if (stopped is not null)
        {
            lines.Add(LimingFormulas.All["lime-no-rate"].Line("0 ton/ac", ("what", stopped)).From(Request.Rate.Basis.Origin));
            return lines.ToImmutable();
        }

        lines.AddRange(
            Request.EarlierLime?.CreditLines("Earlier lime taken off", Request.Rate.Institution, Request.SoilClass) ?? []
        );
        lines.AddRange(RoundingLines());
        lines.AddRange(DepthLines());
        lines.AddRange(MaterialLines());
        lines.AddRange(PlotLines());
        if (Dressings.Length > 1)
        {
            lines.AddRange(Dressings.Select(LineOf));
        }

        return lines.ToImmutable();
    }

    private IEnumerable<WorkedLine> DepthLines()
    {
        double from = Request.Rate.Depth.Inches;
        double to = BasisRate.Depth.Inches;
        if (Tolerance.AreEqual(to, from))
        {
            yield break;
        }

        double rate = BasisRate.AtDepth(Request.Rate.Depth).OfBasis.PoundsPerAcre;
        yield return LimingFormulas
            .All["lime-at-depth"]
            .Line(
                $"{LimeText.Tons(BasisRate.OfBasis.PoundsPerAcre)} ton/ac",
                ("rate", LimeText.Tons(rate)),
                ("depth worked", Amounts.Print(to, 2)),
                ("depth of the rate", Amounts.Print(from, 2))
            );
    }

    private IEnumerable<WorkedLine> MaterialLines()
    {
        var material = Request.Material;
        string factor = Amounts.Print(ProductPerBasis, 4);
        if (Request.Rate.IndexFor(material) is { } index)
        {
            foreach (var line in LimeFigureLines.Of(material, index))
            {
                yield return line;
            }

            yield return LimingFormulas
                .All["lime-strength-factor"]
                .Line(
                    factor,
                    ("what", "Material for a ton of that lime"),
                    ("strength of its lime", $"{Request.Rate.Basis.Figure}"),
                    ("strength of the other", $"{material.FigureIn(index)}")
                )
                .From(index.Origin);
        }
        else if (material.IsCaustic)
        {
            yield return LimingFormulas
                .All["lime-strength-factor"]
                .Line(
                    factor,
                    ("what", "Material for a ton of limestone"),
                    ("strength of its lime", Amounts.Print(LimingConstants.All["ordinary-lime-cce"], 0)),
                    ("strength of the other", Amounts.Print(material.CcePercent!.Value, 1))
                )
                .From(LimingConstants.All.Find("ordinary-lime-cce").Origin);
        }

        yield return LimingFormulas
            .All["lime-in-other-lime"]
            .Line(
                $"{LimeText.Tons(ProductRate.PoundsPerAcre)} ton/ac = "
                    + $"{Amounts.Print(ProductRate.PoundsPerThousandSquareFeet, 1)} lb/1000 ft2",
                ("what", $"Rate of {material.Name}"),
                ("rate", LimeText.Tons(BasisRate.OfBasis.PoundsPerAcre)),
                ("factor", factor)
            );
    }

    private IEnumerable<WorkedLine> RoundingLines()
    {
        if (Request.Rounding is { } rounding)
        {
            yield return LimingFormulas
                .All["lime-in-whole-steps"]
                .Line(
                    $"{LimeText.Tons(BasisRate.AtDepth(Request.Rate.Depth).OfBasis.PoundsPerAcre)} ton/ac, "
                        + $"in steps of {Amounts.Print(rounding.Step, "ton/ac", 4)}",
                    ("institution", $"{rounding.Institution}")
                )
                .From(rounding.Origin);
        }
    }

    private IEnumerable<WorkedLine> PlotLines()
    {
        double applied = AlreadyApplied.Pounds;
        string appliedText = Amounts.Print(AlreadyApplied, "lb", 1);
        if (applied > 0)
        {
            yield return LimingFormulas
                .All["lime-applied-in-material"]
                .Line(
                    appliedText,
                    ("in the lime of the rate", Amounts.Print(applied / ProductPerBasis, 1)),
                    ("material for that lime", Amounts.Print(ProductPerBasis, 4))
                );
        }

        yield return LimingFormulas
            .All[applied > 0 ? "lime-for-area-less-applied" : "lime-for-area"]
            .Line(
                $"{Amounts.Print(Product, "lb", 1)} = {Amounts.Print(Product, "ton", 3)}",
                ("what", "For the plot"),
                ("rate", Amounts.Print(ProductRate, "lb/ac", 1)),
                ("area", Amounts.Print(Request.Area, "ac", 3)),
                ("already applied", appliedText)
            );
        if (Magnesium is { } magnesium && Request.Material.Magnesium is { } share)
        {
            yield return LimingFormulas
                .All["lime-magnesium"]
                .Line(
                    Amounts.Print(magnesium, "lb", 1),
                    ("material", Amounts.Print(Product, "lb", 1)),
                    ("share of magnesium", Amounts.Print(share.Value, 4))
                );
        }

        if (Bags is { } bags)
        {
            yield return LimingFormulas.All["lime-in-whole-bags"].Line($"{Amounts.Print(bags, 0)} bags of {Request.Package}");
        }
    }

    private WorkedLine LineOf(LimeDressing part)
    {
        string when = part.On is { } day ? LimeText.Date(day) : $"month {Amounts.Print(part.MonthsAfterFirst, 0)}";
        string bags = part.Bags is { } count ? $", {Amounts.Print(count, 0)} bags" : "";
        return LimingFormulas
            .All["lime-for-area"]
            .Line(
                $"{Amounts.Print(part.Mass, "lb", 1)}{bags}",
                ("what", $"Dressing {Amounts.Print(part.Number, 0)}, {when}"),
                ("rate", Amounts.Print(part.Rate, "lb/ac", 1)),
                ("area", Amounts.Print(Request.Area, "ac", 3))
            );
    }
}
