using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Which kinds do not stand the ground: its pH and how it drains. What is not known is not checked.</summary>
internal static class GroundFindings
{
    internal static IEnumerable<Finding> Of(IReadOnlyCollection<CropKind> kinds, PlotSoil? soil)
    {
        if (soil?.WaterPh is { } ph)
        {
            var known = kinds.Where(k => k.Ph is not null).ToList();
            foreach (
                var (code, outside) in Told(
                    (BlendCodes.PhLow, known.Where(k => ph.Value < k.Ph!.MinimumPh)),
                    (BlendCodes.PhHigh, known.Where(k => ph.Value > k.Ph!.MaximumPh))
                )
            )
            {
                yield return FindingCatalog.Create(code, ("ph", ph.ToString()), ("kinds", WithPh(outside)));
            }
        }

        if (soil?.Drainage is { } drainage)
        {
            var known = kinds.Where(k => k.Drainage is not null).ToList();
            foreach (
                var (code, unsuited) in Told(
                    (BlendCodes.GroundWet, known.Where(k => drainage < k.Drainage!.Wettest)),
                    (BlendCodes.GroundDry, known.Where(k => drainage > k.Drainage!.Driest))
                )
            )
            {
                yield return FindingCatalog.Create(code, ("kinds", StandNames.Of(unsuited)));
            }
        }
    }

    internal static string WithPh(IEnumerable<CropKind> kinds) =>
        string.Join(
            "; ",
            kinds.Select(k => $"{k.ShortName} {Amounts.Print(k.Ph!.MinimumPh, 1)}-{Amounts.Print(k.Ph.MaximumPh, 1)}")
        );

    private static IEnumerable<(string Code, CropKind[] Kinds)> Told(params (string Code, IEnumerable<CropKind> Kinds)[] sides) =>
        sides.Select(s => (s.Code, Kinds: s.Kinds.ToArray())).Where(s => s.Kinds.Length > 0);
}
