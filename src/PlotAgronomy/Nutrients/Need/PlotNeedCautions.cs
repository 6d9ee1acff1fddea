using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The remarks on a plot's need, in the order of its sum.</summary>
internal static class PlotNeedCautions
{
    internal static IEnumerable<Finding> Of(PlotNeedSum sum)
    {
        bool isBuiltUpInPlace = IsBuiltUpInPlace(sum);
        return
        [
            .. Parts(sum).Where(f => !isBuiltUpInPlace || f.Code != NutrientCodes.NothingCarriedOff),
            .. isBuiltUpInPlace ? [FindingCatalog.Create(NutrientCodes.RemovalIgnored)] : Array.Empty<Finding>(),
        ];
    }

    private static IEnumerable<Finding> Parts(PlotNeedSum sum) =>
        [
            .. ComponentCautions.Of(sum.Request, sum.Components),
            .. sum.Nitrogen.Findings,
            .. sum.Secondary.SelectMany(s => s.Findings),
            .. sum.Own.Findings,
            .. sum.Choice.PrintedRemarks(),
            .. Institutions(sum.Request),
            .. sum.Choice.OverrideRemarks(),
            .. OnNitrogen(sum),
            .. SeasonCautions.Of(sum),
            .. sum.Cure.Findings,
            .. sum.Used.Where(sum.IsTooLittle).Select(PurchaseFloor.Told),
        ];

    /// <summary>Nothing is carried off, and the system would put back what is: said once for the plot.</summary>
    private static bool IsBuiltUpInPlace(PlotNeedSum sum) =>
        sum.Request is { System: { } system, Kinds.IsEmpty: false }
        && system.Philosophy == SystemPhilosophy.BuildUpAndMaintenance
        && sum.Components.All(c => !ComponentNeeds.UseOf(sum.Request, c.Component.Kind).IsCarriedOff);

    private static IEnumerable<Finding> Institutions(PlotNeedRequest request) =>
        request.System is { } system && ProgramSystems.Foreign(request.Soil.Report, system) is { } program
            ?
            [
                FindingCatalog.Create(
                    NutrientCodes.InstitutionsMixed,
                    ("program", program.Institution.Name),
                    ("system", system.Name)
                ),
            ]
            : [];

    private static IEnumerable<Finding> OnNitrogen(PlotNeedSum sum)
    {
        if (sum.NitrogenTarget is not { } target || target.AtLeast <= ApplicationRate.Zero)
        {
            yield break;
        }

        if (sum.Nitrogen.IsLegumesOnly)
        {
            yield return FindingCatalog.Create(
                NutrientCodes.NitrogenOnLegume,
                ("rate", Amounts.Print(target.AtLeast.PoundsPerAcre, 1))
            );
        }

        var doses = sum.NitrogenDoses;
        double largest = (doses.IsEmpty ? NitrogenOfBlend.SpreadAtMost(target) : doses.Max(d => d.High)).PoundsPerAcre;
        if (largest > NutrientConstants.All["largest-single-dose"])
        {
            yield return FindingCatalog.Create(NutrientCodes.NitrogenSingleDose, ("rate", Amounts.Print(largest, 1)));
        }

        if (SystemRequest.IsOrganic(sum.Request.Soil))
        {
            yield return FindingCatalog.Create(
                NutrientCodes.NitrogenOrganicSoil,
                ("rate", Amounts.Print(target.AtLeast.PoundsPerAcre, 1))
            );
        }

        yield return FindingCatalog.Create(NutrientCodes.UreaNeedsRain);
    }
}
