using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>What lime and acid do over the years.</summary>
internal static partial class LimingSums
{
    private static void Time(Recorder recorder)
    {
        foreach (var material in new[] { Ground, Materials[3], Materials[6] })
        {
            foreach (var placement in Enum.GetValues<LimePlacement>())
            {
                foreach (int months in new[] { 0, 2, 6, 14 })
                {
                    recorder.Call($"lime outlook: {material.Name}, {Words(placement)}, sown after {months} months",
                        () => LimeOutlook.For(new LimeOutlookRequest
                        {
                            Soil = new SoilReport
                            {
                                Laboratory = "test laboratory",
                                WaterPh = WaterPh.FromValue(5.3),
                                PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(9),
                                Texture = SoilTexture.SiltLoam,
                            },
                            Rate = Rate(2),
                            Material = material,
                            Placement = placement,
                            LimedOn = new DateOnly(2027, 1, 1),
                            PlantingOn = new DateOnly(2027, 1, 1).AddMonths(months),
                            ShareDelivered = Percent(80),
                            Kinds = [.. Blend.Select(k => k.Kind)],
                        }));
                }
            }
        }
    }

    private static void AcidAndSulfur(Recorder recorder)
    {
        foreach (string fertilizer in NitrogenAcidity.Fertilizers)
        {
            foreach (var convention in Enum.GetValues<AcidityConvention>())
            {
                recorder.Call($"acidity of {fertilizer}, {Words(convention)}",
                    () => NitrogenAcidity.For(fertilizer, PerAcre(120), convention));
                recorder.Call($"pH fall by {fertilizer}, {Words(convention)}",
                    () =>
                        NitrogenAcidity.For(fertilizer, PerAcre(120), convention).PhFall(LimeBufferCapacity.AtEquilibrium(500),
                            Inches(6)));
            }
        }

        recorder.Call("pH fall by a half-hour capacity",
            () =>
                NitrogenAcidity.For("urea", PerAcre(120),
                    AcidityConvention.PlantsTakeUpNitrate).PhFall(LimeBufferCapacity.FromThirtyMinutes(250), Inches(8)));
        recorder.Call("sulfur: carbonate undone by a pound", () => SulfurNeed.CarbonatePerSulfur);
        foreach (var texture in Enum.GetValues<SoilTexture>())
        {
            foreach (double ph in new[] { 5.8, 7.2, 8.1 })
            {
                recorder.Call($"sulfur on {Words(texture)} of pH {ph}",
                    () => SulfurNeed.For(WaterPh.FromValue(ph), 6.5, texture));
            }
        }

        recorder.Call("sulfur on free lime", () => SulfurNeed.For(WaterPh.FromValue(8.1), 6.5, SoilTexture.Loam, true));
    }
}
