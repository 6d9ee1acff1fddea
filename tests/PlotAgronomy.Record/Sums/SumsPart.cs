namespace PlotAgronomy.Record.Sums;

/// <summary>At least one call of every public sum, room by room.</summary>
internal sealed class SumsPart : IRecordedPart
{
    public string Name => "sums";

    public void Record(Recorder recorder)
    {
        RootSums.Record(recorder);
        LandSums.Record(recorder);
        SoilSums.Record(recorder);
        SeedsSums.Record(recorder);
        LimingSums.Record(recorder);
        NutrientsSums.Record(recorder);
        BlendsSums.Record(recorder);
        SpreadingSums.Record(recorder);
        FertilizersSums.Record(recorder);
    }
}
