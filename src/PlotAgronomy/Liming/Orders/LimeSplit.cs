using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>The parts an order goes on in.</summary>
internal readonly struct LimeSplit
{
    private readonly LimeOrderRequest request;
    private readonly LimePlacementRule? rule;
    private readonly double acres;
    private readonly double pounds;
    private readonly double part;
    private readonly int count;
    private readonly int months;

    internal LimeSplit(LimeOrderRequest request, LimePlacementRule? rule, double acres, double pounds)
    {
        this.request = request;
        this.rule = rule;
        this.acres = acres;
        this.pounds = pounds;
        count = pounds > 0 ? 1 : 0;
        part = pounds;
        if (Most is not { } most || !Tolerance.IsAbove(PoundsPerAcre, most.PoundsPerAcre))
        {
            return;
        }

        int parts = Package.RoundUp(PoundsPerAcre / most.PoundsPerAcre);
        bool byRule = request.MostAtOnce is null && OwnMost is not null;
        count = byRule && rule!.MostDressings is { } fewest ? Math.Min(parts, fewest) : parts;
        part = (byRule && rule!.SplitsEvenly) || count < parts ? pounds / count : most.PoundsPerAcre * acres;
        months = request.MonthsBetween ?? rule?.MonthsBetween ?? (int)LimingConstants.All["months-between"];
        IsSplit = true;
    }

    internal ImmutableArray<LimeDressing> Dressings
    {
        get
        {
            var dressings = ImmutableArray.CreateBuilder<LimeDressing>(count);
            for (int number = 1; number <= count; number++)
            {
                dressings.Add(Dressing(number, number < count ? part : pounds - (part * (count - 1))));
            }

            return dressings.MoveToImmutable();
        }
    }

    internal IEnumerable<Finding> Findings()
    {
        if (IsHigh)
        {
            yield return FindingCatalog.Create(LimingCodes.RateHigh, ("rate", LimeText.Tons(PoundsPerAcre)));
        }

        if (IsSplit)
        {
            yield return SplitFinding(Most!.Value);
        }
    }

    private bool IsSplit { get; }

    private double PoundsPerAcre => pounds / acres;

    private bool IsHigh => pounds > 0 && PoundsPerAcre > LimePlacementRule.HighestAtOnce.PoundsPerAcre;

    private ApplicationRate? OwnMost => request.MostAtOnce ?? rule?.MostAtOnce;

    private ApplicationRate? Most => OwnMost ?? (IsHigh ? LimePlacementRule.HighestAtOnce : null);

    private Finding SplitFinding(ApplicationRate most)
    {
        string mostText = LimeText.Tons(most.PoundsPerAcre);
        string whose =
            request.MostAtOnce is not null ? "the most this order allows at once"
            : OwnMost is null
                ? $"the most {LimePlacementRule.WithHighestLimit.Institution} puts on at once, borrowed because "
                    + $"{request.Rate.Institution} prints no limit for lime put on this way"
            : $"the most {request.Rate.Institution} puts on at once";
        string by = request.MonthsBetween is null && rule?.MonthsBetween is null ? " by common practice" : "";
        return months == 0
            ? FindingCatalog.Create(
                LimingCodes.SplitPlowed,
                ("most", mostText),
                ("whose", whose),
                ("count", Amounts.Print(count, 0))
            )
            : FindingCatalog.Create(
                LimingCodes.Split,
                ("most", mostText),
                ("whose", whose),
                ("count", Amounts.Print(count, 0)),
                ("months", Amounts.Print(months, 0)),
                ("by", by)
            );
    }

    private LimeDressing Dressing(int number, double mass)
    {
        return new LimeDressing
        {
            Number = number,
            MonthsAfterFirst = (number - 1) * months,
            On = request.FirstDressingOn?.AddMonths((number - 1) * months),
            Rate = ApplicationRate.FromPoundsPerAcre(mass / acres),
            Mass = Mass.FromPounds(mass),
            Bags = request.Package.IsWhole ? Package.RoundUp(mass / request.Package.Pounds) : null,
        };
    }
}
