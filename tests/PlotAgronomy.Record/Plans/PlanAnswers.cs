using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Record.Plans;

/// <summary>What the rooms answer about one plan, under meanings that do not lean on the names of types.</summary>
internal static class PlanAnswers
{
    internal static void Record(Recorder to, string @case, PlotAnswers answers)
    {
        void Add(string meaning, object? value) => to.Add(@case, meaning, value);
        Add("area", answers.Plan.Plot.Area);
        LimeAnswers.Record(Add, answers.Lime.Told);
        NutrientAnswers.Record(Add, answers);
        Add("seed.state", answers.Seed.State);
        if (answers.Seed.State == AnswerState.Given)
        {
            Seeds(Add, answers);
            Crowding(Add, answers);
        }

        Add("spreading.state", answers.Spreading.State);
        if (answers.Spreading.State == AnswerState.Given)
        {
            Passes(Add, answers);
        }

        Add("report.findings", answers.Soil.OrNull()?.ReportFindings);
        Add("findings", answers.Findings);
        Add("total.cost", answers.TotalCost);
    }

    internal static string Ids(IEnumerable<CropKind> kinds) => string.Join(' ', kinds.Select(k => k.Id));

    internal static string At(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");

    private static void Seeds(Action<string, object?> add, PlotAnswers answers)
    {
        foreach (var sown in answers.Seed.Value.Kinds)
        {
            string seed = $"seed.{sown.Planned.Kind.Id}";
            add($"{seed}.weight", sown.Weight.ToMass());
            add($"{seed}.bulk", sown.Bulk.Bulk.Rate);
            add($"{seed}.pls", sown.Part.LiveRate.Rate);
            add($"{seed}.part", sown.Bulk.PureLiveSeedPart);
            add($"{seed}.bulk.germinated", sown.Bulk.CountingGerminationOnly?.Rate);
            add($"{seed}.bulk.dormant", sown.Bulk.CountingHardAndDormant?.Rate);
            add($"{seed}.bulk.better", sown.Bulk.BulkIfSeedIsBetter?.Rate);
            add($"{seed}.bulk.worse", sown.Bulk.BulkIfSeedIsWorse?.Rate);
            add($"{seed}.per.ft2", sown.Part.LiveSeedsPerSquareFoot);
            Total(add, $"{seed}.share", sown.Part.ShareOfFullStand);
            add($"{seed}.share.of.stand", sown.Part.ShareOfStand);
            add($"{seed}.share.of.seeds", sown.Part.ShareOfLiveSeeds);
            add($"{seed}.packages", sown.Packages);
            add($"{seed}.cost", sown.Cost);
            add($"{seed}.lot", sown.Planned.Offer.Item.Label);
        }

        add("seed.total", answers.Seed.Value.Batch.Total.ToMass());
        add("seed.total.per.ft2", answers.Seed.Value.Blend.LiveSeedsPerSquareFoot);
        add("seed.total.pls", answers.Seed.Value.Blend.LiveRate);
    }

    private static void Crowding(Action<string, object?> add, PlotAnswers answers)
    {
        Total(add, "crowding.total", answers.Seed.Value.Crowding.Total);
        add("crowding.kinds", answers.Seed.Value.Crowding.Kinds);
        add("crowding.most", answers.Seed.Value.Crowding.MostTotal);
        foreach (var group in answers.Seed.Value.Crowding.Groups)
        {
            add($"crowding.{group.Group}", group.Share);
            add($"crowding.{group.Group}.cap", group.Cap);
            add($"crowding.{group.Group}.over", group.IsOverCap);
        }
    }

    private static void Total(Action<string, object?> add, string meaning, Blends.StandTotal total)
    {
        add($"{meaning}.low", total.Lowest);
        add(meaning, total.Chosen);
        add($"{meaning}.high", total.Highest);
    }

    private static void Passes(Action<string, object?> add, PlotAnswers answers)
    {
        for (int i = 0; i < answers.Spreading.Value.Passes.Length; i++)
        {
            var pass = answers.Spreading.Value.Passes[i];
            string at = At("pass", i);
            add($"{at}.kinds", Ids(pass.Kinds.Select(k => k.Planned.Kind)));
            add($"{at}.weight", pass.Load);
            add($"{at}.rate", pass.Rate);
            add($"{at}.distance", pass.Walk.Distance);
            add($"{at}.sizes", pass.Group.LargestToSmallest);
            add($"{at}.gate", pass.Run?.Gate);
            add($"{at}.measured", pass.Measured?.Rate);
            add($"{at}.flow", pass.Setting.OrNull()?.Flow);
            add($"{at}.speed", pass.Setting.OrNull()?.Speed);
            add($"{at}.time", pass.Setting.OrNull()?.TimePer100Feet);
            if (pass.Laid.TryGet(out var layout))
            {
                add($"{at}.lanes", layout.Passes.Length);
                add($"{at}.turns", layout.Turns);
                add($"{at}.spacing", layout.Spacing);
                add($"{at}.path", layout.Path);
                add($"{at}.walk", layout.TotalTime);
                add($"{at}.outside", layout.OutsideShare);
            }
        }
    }
}
