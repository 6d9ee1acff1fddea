using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>The flags that the rows of one column of needs may have: a bit for each finding that this system can raise for a row
/// of this crop.</summary>
internal sealed class NeedRowFlags
{
    private readonly ulong[] ofRemarks;

    /// <param name="system">System.</param>
    /// <param name="request">What it is asked for every row.</param>
    /// <param name="nutrient">Nutrient.</param>
    /// <param name="unanswered">Why no row is answered; null where rows are.</param>
    /// <param name="raises">What the sum of a row may notice.</param>
    internal NeedRowFlags(
        RecommendationSystem system,
        SystemRequest request,
        PlantNutrient nutrient,
        UnansweredNutrient? unanswered,
        NeedRemarks raises
    )
    {
        var findings = new List<Finding>
        {
            FindingCatalog.Create(ColumnCodes.ValueImpossible, ("limits", NeedRowLimits.InWords)),
            FindingCatalog.Create(ColumnCodes.ValueMissing, ("what", "a value that the system needs")),
        };
        (Impossible, Missing) = (1UL << 0, 1UL << 1);
        if (unanswered is not null)
        {
            Unanswered = 1UL << findings.Count;
            findings.Add(unanswered.Finding);
        }

        ofRemarks = new ulong[2 * (int)Enum.GetValues<NeedRemarks>()[^1]];
        foreach (var remark in Enum.GetValues<NeedRemarks>().Where(r => r != NeedRemarks.None && raises.HasFlag(r)))
        {
            ulong flag = 1UL << findings.Count;
            findings.Add(OfAnyRow(remark, system, request, nutrient));
            for (int all = 0; all < ofRemarks.Length; all++)
            {
                ofRemarks[all] |= ((NeedRemarks)all).HasFlag(remark) ? flag : 0;
            }
        }

        Findings = RowFindings.InOrder([.. findings]);
    }

    /// <summary>What the bits stand for.</summary>
    internal RowFindings Findings { get; }

    /// <summary>No row is answered.</summary>
    internal ulong Unanswered { get; }

    private ulong Impossible { get; }

    private ulong Missing { get; }

    internal ulong Of(NeedRemarks remarks) => ofRemarks[(int)remarks];

    internal ulong OfUnusable(RowStatus status) => status == RowStatus.Missing ? Missing : Impossible;

    /// <summary>The finding of a remark, for a row that is not named.</summary>
    private static Finding OfAnyRow(
        NeedRemarks remark,
        RecommendationSystem system,
        SystemRequest request,
        PlantNutrient nutrient
    )
    {
        var name = ("system", system.Name);
        var what = ("nutrient", SoilWords.For(nutrient));
        return remark switch
        {
            NeedRemarks.CurveTurnsUp => FindingCatalog.Create(
                NutrientCodes.CurveTurnsUp,
                name,
                what,
                ("equation", "of the crop"),
                ("index", "of the row"),
                ("raw", "more than 0"),
                ("zero", "its first zero")
            ),
            NeedRemarks.YearlyCap => FindingCatalog.Create(
                NutrientCodes.YearlyCap,
                name,
                what,
                ("rate", "a higher sum in"),
                ("cap", "the printed cap")
            ),
            NeedRemarks.NoUpperLimit => FindingCatalog.Create(NutrientCodes.NoUpperLimit, name, what),
            NeedRemarks.RangeOnly => FindingCatalog.Create(
                NutrientCodes.RangeOnly,
                name,
                ("low", "a lower figure"),
                ("high", "an upper one")
            ),
            NeedRemarks.MaintenancePrinted => FindingCatalog.Create(
                NutrientCodes.MaintenancePrinted,
                name,
                what,
                ("rate", "the row's rate")
            ),
            NeedRemarks.BeyondPrintedTable => Silence(
                NutrientCodes.BeyondPrintedTable,
                "the row's reading lies above the last class it prints, where the rate is none already"
            ),
            NeedRemarks.RatesNotHeld => Silence(
                NutrientCodes.RatesNotHeld,
                "for the class of the row's reading only the limits are in this library, not the rates"
            ),
            NeedRemarks.YesWithoutRate => Silence(
                NutrientCodes.YesWithoutRate,
                "the row's reading lies below the critical level; fertilizer is likely to pay, but it prints no rate"
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(remark), remark, "Must be one remark."),
        };

        Finding Silence(string code, string reason) =>
            new UnansweredNutrient(system, request, nutrient, code, _ => reason).Finding;
    }
}
