using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>What an order remarks on its material and the way it is put on.</summary>
internal static class LimeMaterialCautions
{
    /// <param name="request">What was ordered.</param>
    /// <param name="rule">The institution's rule for lime put on this way; null where it prints none.</param>
    /// <param name="depth">Depth that is treated.</param>
    /// <param name="rate">Rate of the material.</param>
    /// <param name="isAnyDue">Whether any of it is still to go on.</param>
    internal static IEnumerable<Finding> Of(
        LimeOrderRequest request,
        LimePlacementRule? rule,
        Length depth,
        ApplicationRate rate,
        bool isAnyDue
    )
    {
        var material = request.Material;
        var basis = request.Rate.Basis;
        var figure = basis.Figure;
        if (basis.Status == DataStatus.Memory)
        {
            yield return MemoryGate.FindingFor($"the lime '{basis.Name}'", basis.Origin);
        }

        if (figure is null)
        {
            yield return FindingCatalog.Create(LimingCodes.BasisUnstated);
        }
        else if (request.Rate.IndexFor(material) is null)
        {
            yield return FindingCatalog.Create(LimingCodes.CountedAsAgLime, ("basis", basis.Name), ("material", material.Name));
        }
        else if (figure.Index == LimeIndex.CalciumCarbonateEquivalent)
        {
            yield return FindingCatalog.Create(LimingCodes.FinenessNotCounted, ("basis", basis.Name));
        }
        else if (figure.Index.Status == DataStatus.Memory && !material.StatedFigures.Any(f => f.Index == figure.Index))
        {
            yield return MemoryGate.FindingFor(figure.Index.Name, figure.Index.Origin);
        }

        if (request.Placement == LimePlacement.Surface && isAnyDue)
        {
            yield return FindingCatalog.Create(LimingCodes.SurfaceSlow);
            if (rule is null)
            {
                var practice = LimePlacementRule.PracticeOnSurface;
                yield return FindingCatalog.Create(
                    LimingCodes.NoSurfaceRule,
                    ("institution", request.Rate.Institution.Name),
                    ("depth", LimeText.Inches(depth)),
                    ("most", LimeText.Tons((request.MostAtOnce ?? practice.MostAtOnce!.Value).PoundsPerAcre))
                );
            }
            else if (rule.Origin.Status == DataStatus.Memory)
            {
                yield return MemoryGate.FindingFor($"the rule of {rule.Institution} for lime on the surface", rule.Origin);
            }
        }

        foreach (var application in request.AlreadyApplied.Where(a => !a.Material.Neutralizes))
        {
            yield return FindingCatalog.Create(LimingCodes.NoNeutralizingValue, ("material", application.Material.Name));
        }

        if (request.WithUreaOrAmmonium)
        {
            yield return FindingCatalog.Create(LimingCodes.WithNitrogen);
        }

        foreach (var caution in LimeCautions.OfMagnesium(request.Soil?.Report, material))
        {
            yield return caution;
        }

        foreach (var caution in LimeCautions.Of(material, rate))
        {
            yield return caution;
        }
    }
}
