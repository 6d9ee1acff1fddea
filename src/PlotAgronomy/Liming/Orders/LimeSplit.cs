using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>The parts an order goes on in.</summary>
internal sealed class LimeSplit(LimeOrderTerms terms, LimePlacementRule? rule, double acres, List<Finding> findings)
{
    internal ImmutableArray<LimeDressing> Of(double pounds)
    {
        if (pounds <= 0)
        {
            return [];
        }

        double poundsPerAcre = pounds / acres;
        bool high = poundsPerAcre > LimePlacementRule.HighestAtOnce.PoundsPerAcre;
        if (high)
        {
            findings.Add(FindingCatalog.Create(LimingCodes.RateHigh, ("rate", LimeText.Tons(poundsPerAcre))));
        }

        var own = terms.MostAtOnce ?? rule?.MostAtOnce;
        var limit = own ?? (high ? LimePlacementRule.HighestAtOnce : null);
        if (limit is not { } most || !Tolerance.IsAbove(poundsPerAcre, most.PoundsPerAcre))
        {
            return [Dressing(1, 0, pounds)];
        }

        int parts = WholePackages.RoundUp(poundsPerAcre / most.PoundsPerAcre);
        bool byRule = terms.MostAtOnce is null && own is not null;
        int count = byRule && rule!.MostDressings is { } fewest ? Math.Min(parts, fewest) : parts;
        double part = (byRule && rule!.SplitsEvenly) || count < parts ? pounds / count : most.PoundsPerAcre * acres;
        int months = terms.MonthsBetween ?? rule?.MonthsBetween ?? (int)LimingConstants.All["months-between"];
        AddSplitFinding(most, count, months, borrowed: own is null);
        return
        [
            .. Enumerable
                .Range(1, count)
                .Select(number => Dressing(number, months, number < count ? part : pounds - (part * (count - 1)))),
        ];
    }

    private void AddSplitFinding(ApplicationRate most, int count, int months, bool borrowed)
    {
        string mostText = LimeText.Tons(most.PoundsPerAcre);
        string whose =
            terms.MostAtOnce is not null ? "the most this order allows at once"
            : borrowed
                ? $"the most {LimePlacementRule.WithHighestLimit.Institution} puts on at once, borrowed because "
                    + $"{terms.Rate.Institution} prints no limit for lime put on this way"
            : $"the most {terms.Rate.Institution} puts on at once";
        string by = terms.MonthsBetween is null && rule?.MonthsBetween is null ? " by common practice" : "";
        findings.Add(
            months == 0
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
                )
        );
    }

    private LimeDressing Dressing(int number, int months, double pounds)
    {
        double? bagPounds = terms.Bag?.Pounds;
        return new LimeDressing
        {
            Number = number,
            MonthsAfterFirst = (number - 1) * months,
            On = terms.FirstDressingOn?.AddMonths((number - 1) * months),
            Rate = ApplicationRate.FromPoundsPerAcre(pounds / acres),
            Mass = Mass.FromPounds(pounds),
            Bags = bagPounds is { } bag ? WholePackages.RoundUp(pounds / bag) : null,
        };
    }
}
