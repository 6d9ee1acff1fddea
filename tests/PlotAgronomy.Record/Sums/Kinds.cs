using PlotAgronomy.Seeds;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Every kind with all its figures.</summary>
internal static class Kinds
{
    private const int Year = 2026;

    internal static void Record(Recorder recorder)
    {
        foreach (var kind in KindCatalog.Standard.Kinds)
        {
            recorder.Add($"kind {kind.Id}", "", kind);
            Rates(recorder, kind);
            Hazards(recorder, kind);
            Places(recorder, kind);
            Windows(recorder, kind);
        }

        Names(recorder);
    }

    private static void Rates(Recorder recorder, CropKind kind)
    {
        foreach (var method in Enum.GetValues<SowingMethod>())
        {
            recorder.Call($"kind {kind.Id}: full rate, {Words(method)}", () => kind.FullRange(method));
            recorder.Call($"kind {kind.Id}: rate on record, {Words(method)}", () => kind.Rates?.For(method));
            recorder.Call($"kind {kind.Id}: where the rate stands, {Words(method)}",
                () => kind.Rates?.EvidenceFor(method).Sources.Select(s => s.Id));
            recorder.Call($"kind {kind.Id}: 9 lb/ac against the published rate, {Words(method)}",
                () => RateCheck.Against(kind, PureLiveSeedRate.FromRate(PerAcre(9), method)));
        }

        recorder.Call($"kind {kind.Id}: seed count", () => kind.RequireSeedCount());
        recorder.Call($"kind {kind.Id}: what counts as viable", () => ViabilityRule.For(kind));
        recorder.Call($"kind {kind.Id}: germination floor", () => SeedAnalysis.GerminationFloorFor(kind));
        recorder.Call($"kind {kind.Id}: driest seed for a tight bag", () => SeedStorage.HermeticCeilingFor(kind));
    }

    private static void Hazards(Recorder recorder, CropKind kind) =>
        recorder.Call($"kind {kind.Id}: hazards in order", () => kind.Hazards.Select(h => (h.Type, h.Level, h.Evidence.Status)));

    private static void Places(Recorder recorder, CropKind kind)
    {
        recorder.Call($"kind {kind.Id}: drainage it stands",
            () => kind.Drainage is { } drainage ? Enum.GetValues<DrainageClass>().Where(drainage.Stands).ToArray() : null);
        recorder.Call($"kind {kind.Id}: use by season",
            () => kind.Seasons is { } seasons ? Enum.GetValues<SeasonOfUse>().Select(seasons.In).ToArray() : null);
        recorder.Call($"kind {kind.Id}: test date rule of the federal act",
            () => TestDateRule.For(null, kind).Id);
    }

    private static void Windows(Recorder recorder, CropKind kind)
    {
        foreach (var region in PlantingRegion.All)
        {
            Windows(recorder, $"kind {kind.Id}: published window, {region.Id}", [.. PlantingWindow.Published(kind, region)]);
            Windows(recorder, $"kind {kind.Id}: window from memory, {region.Id}",
                [.. PlantingWindow.FromMemory(kind, region)]);
        }
    }

    private static void Windows(Recorder recorder, string name, PlantingWindow[] windows)
    {
        for (int i = 0; i < windows.Length; i++)
        {
            var window = windows[i];
            recorder.Add($"{name}, {i + 1}", "", window);
            recorder.Add($"{name}, {i + 1}", "first day", window.FirstDay(Year));
            recorder.Add($"{name}, {i + 1}", "last day", window.LastDay(Year));
            recorder.Add($"{name}, {i + 1}",
                "open on the first of months",
                    Enumerable.Range(1, 12).Where(m => window.Allows(new DateOnly(Year, m, 1))).ToArray());
        }
    }

    private static void Names(Recorder recorder)
    {
        foreach (string name in new[] { "crimson", "CLOVER", "winter pea", "rye", "wheat", "chickory", "" })
        {
            recorder.Call($"kinds called '{name}'", () => KindCatalog.Standard.Candidates(name).Select(k => k.Id).ToArray());
            recorder.Call($"the kind called '{name}'", () => KindCatalog.Standard.Find(name).Id);
            recorder.Call($"whether a kind is called '{name}'",
                () => KindCatalog.Standard.TryFind(name, out var kind, out _) ? kind!.Id : "no");
        }

        var alfalfa = KindCatalog.Standard.Find("alfalfa");
        var own = KindCatalog.Standard.With(alfalfa with { SeedCount = SeedCount.FromSeedsPerPound(210_000) });
        recorder.Call("a kind of the user's own", () => own.Find("alfalfa"));
        recorder.Call("how many kinds with one of the user's own", () => own.Kinds.Count);
    }
}
