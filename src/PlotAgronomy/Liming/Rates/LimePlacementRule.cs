using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>What an institution prints on lime worked in or left on the surface: depth counted, most at once, months
/// between.</summary>
internal sealed class LimePlacementRule
{
    private static readonly Table<LimePlacementRule> All = new("Liming/Data/placement.csv", r => new LimePlacementRule(r));

    private static readonly Lazy<LimePlacementRule> Highest = new(() => All.Rows.MaxBy(r => r.MostAtOnce?.PoundsPerAcre ?? 0)!);

    private LimePlacementRule(CsvRow row)
    {
        Institution = row.Institution();
        Placement = row.Choice<LimePlacement>("placement");
        TreatedDepthInches = row.NumberOrNull("treated_depth_in");
        MostAtOnce = row.NumberOrNull("most_at_once_ton_per_ac") is { } tons ? ApplicationRate.FromShortTonsPerAcre(tons) : null;
        MonthsBetween = row.TextOrNull("between_months") is null ? null : row.Integer("between_months");
        SplitsEvenly = row.YesOrNo("splits_evenly");
        MostDressings = row.TextOrNull("most_dressings") is null ? null : row.Integer("most_dressings");
        Origin = row.Origin();
    }

    /// <summary>The rule with the highest limit known here (Pennsylvania's for field crops, LIME-S15); borrowed where an
    /// institution prints none.</summary>
    internal static LimePlacementRule WithHighestLimit => Highest.Value;

    internal static ApplicationRate HighestAtOnce => WithHighestLimit.MostAtOnce!.Value;

    /// <summary>What common practice does with lime on the surface where an institution prints nothing.</summary>
    internal static LimePlacementRule PracticeOnSurface => FindForInstitution(Institution.Practice, LimePlacement.Surface)!;

    /// <summary>The depth a rate is counted for where the order states none: by the institution's rule, on the surface else by
    /// common practice, else its own.</summary>
    internal static Length DepthOf(LimeRate rate, LimePlacement placement) =>
        (FindForInstitution(rate.Institution, placement) ?? (placement == LimePlacement.Surface ? PracticeOnSurface : null))
            is { TreatedDepthInches: { } inches }
            ? Length.FromInches(inches)
            : rate.Depth;

    internal Institution Institution { get; }

    internal LimePlacement Placement { get; }

    internal double? TreatedDepthInches { get; }

    internal ApplicationRate? MostAtOnce { get; }

    internal int? MonthsBetween { get; }

    /// <summary>Whether a rate above the limit is cut into equal parts; else each part is as large as the limit allows.</summary>
    internal bool SplitsEvenly { get; }

    /// <summary>Parts beyond which the institution splits no further; they then pass the limit.</summary>
    internal int? MostDressings { get; }

    internal Origin Origin { get; }

    /// <summary>The rule an institution prints for this placement, or null.</summary>
    internal static LimePlacementRule? FindForInstitution(Institution institution, LimePlacement placement)
    {
        foreach (var rule in All.Rows)
        {
            if (rule.Placement == placement && rule.Institution == institution)
            {
                return rule;
            }
        }

        return null;
    }
}
