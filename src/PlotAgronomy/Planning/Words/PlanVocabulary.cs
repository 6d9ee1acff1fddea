using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>The words a plan file may use, and what each stands for.</summary>
internal static class PlanVocabulary
{
    internal static readonly PlanWords<PlantingMethod> PlantingMethods = new(
        ("tilled-and-packed", PlantingMethod.TilledAndPacked),
        ("broadcast-then-rolled", PlantingMethod.BroadcastThenRolled),
        ("broadcast-then-mown", PlantingMethod.BroadcastThenMown),
        ("frost-seeded", PlantingMethod.FrostSeeded),
        ("drilled", PlantingMethod.Drilled)
    );

    internal static readonly PlanWords<PlotForm> PlotForms = new(
        ("rectangle", PlotForm.Rectangle),
        ("triangle", PlotForm.Triangle),
        ("trapezoid", PlotForm.Trapezoid),
        ("circle", PlotForm.Circle)
    );

    internal static readonly PlanWords<GroundCover> Covers = new(
        ("bare-ground", GroundCover.BareGround),
        ("legume-stand", GroundCover.LegumeStand),
        ("small-grain", GroundCover.SmallGrain),
        ("smother-crop", GroundCover.SmotherCrop)
    );

    internal static readonly PlanWords<SoilTexture> Textures = PlanWords.From(SoilWords.Textures);

    internal static readonly PlanWords<CropFate> Uses = new(
        ("browsed", CropFate.Browsed),
        ("cut-and-carried-off", CropFate.CarriedOff)
    );

    internal static readonly PlanWords<SoilClass> SoilClasses = PlanWords.From(SoilWords.Classes);

    internal static readonly PlanWords<SoilBuffer> Buffers = PlanWords.From(SoilWords.Buffers);

    internal static readonly PlanWords<PrintedAnalyte> Analytes = new(
        ("P", new(SoilAnalyte.Phosphorus, PrintedForm.Element)),
        ("P2O5", new(SoilAnalyte.Phosphorus, PrintedForm.Oxide)),
        ("K", new(SoilAnalyte.Potassium, PrintedForm.Element)),
        ("K2O", new(SoilAnalyte.Potassium, PrintedForm.Oxide)),
        ("Ca", new(SoilAnalyte.Calcium, PrintedForm.Element)),
        ("Mg", new(SoilAnalyte.Magnesium, PrintedForm.Element)),
        ("Na", new(SoilAnalyte.Sodium, PrintedForm.Element)),
        ("S", new(SoilAnalyte.Sulfur, PrintedForm.Element)),
        ("B", new(SoilAnalyte.Boron, PrintedForm.Element)),
        ("Zn", new(SoilAnalyte.Zinc, PrintedForm.Element)),
        ("Mn", new(SoilAnalyte.Manganese, PrintedForm.Element)),
        ("Cu", new(SoilAnalyte.Copper, PrintedForm.Element)),
        ("Fe", new(SoilAnalyte.Iron, PrintedForm.Element)),
        ("Al", new(SoilAnalyte.Aluminum, PrintedForm.Element))
    );

    /// <summary>Units of nutrients: soluble salts are not read from a plan.</summary>
    internal static readonly PlanWords<SoilTestUnit> Units = PlanWords.From(SoilWords.Units, SoilTestUnit.DecisiemensPerMeter);

    internal static readonly PlanWords<Extractant> Extractants = PlanWords.From(
        SoilWords.Extractants,
        Extractant.HydrochloricAcid,
        Extractant.PotassiumChloride,
        Extractant.SaturatedPaste
    );

    internal static readonly PlanWords<CationChargeBasis> ChargeBases = PlanWords.From(SoilWords.ChargeBases);

    internal static readonly PlanWords<bool> RateMeanings = new(("pure live seed", true), ("bulk", false));

    internal static readonly PlanWords<SowingMethod> SowingMethods = new(
        ("drilled", SowingMethod.Drilled),
        ("broadcast", SowingMethod.Broadcast),
        ("broadcast-under-cover", SowingMethod.BroadcastUnderCover),
        ("frost-seeded", SowingMethod.FrostSeeded)
    );

    internal static readonly PlanWords<DrainageClass> Drainages = new(
        ("very poorly drained", DrainageClass.VeryPoor),
        ("poorly drained", DrainageClass.Poor),
        ("somewhat poorly drained", DrainageClass.SomewhatPoor),
        ("moderately well drained", DrainageClass.ModeratelyWell),
        ("well drained", DrainageClass.Well),
        ("somewhat excessively drained", DrainageClass.SomewhatExcessive),
        ("excessively drained", DrainageClass.Excessive)
    );

    internal static readonly PlanWords<LimingForm> LimingForms = PlanWords.From(LimingWords.Forms);

    internal static readonly PlanWords<YieldUnit> YieldUnits = new(("ton/ac", YieldUnit.Ton), ("bu/ac", YieldUnit.Bushel));

    internal static readonly PlanWords<LegumeCredit> LegumeCredits = new([.. LegumeCredit.All.Select(c => (c.Id, c))]);

    internal static readonly PlanWords<FertilizerSubstance> Substances = PlanWords.From(FertilizerWords.Substances);

    internal static readonly PlanWords<LimeMethod> LimeMethods = new([.. LimeMethod.Everything.Select(m => (m.Id, m))]);

    internal static readonly PlanWords<LimeIndex> LimeIndices = new([.. LimeIndex.Everything.Select(i => (i.Id, i))]);

    internal static readonly PlanWords<LimeBasis> LimeBases = new([.. LimeBasis.Everything.Select(b => (b.Id, b))]);

    internal static readonly PlanWords<SoilRegion> Regions = PlanWords.From(EnumWords<SoilRegion>.FromNames());

    internal static readonly PlanWords<SampleMoisture> SampleStates = new(
        ("field-moist", SampleMoisture.FieldMoist),
        ("dried", SampleMoisture.Dried)
    );

    internal static readonly PlanWords<SoilSupply> Supplies = PlanWords.From(EnumWords<SoilSupply>.FromNames());

    internal static readonly PlanWords<SoilSupply> CapacityGroups = new(("low", SoilSupply.Low), ("high", SoilSupply.High));

    internal static readonly PlanWords<string> PhosphorusRatings = new([.. SouthCarolinaSystem.Ratings.Select(r => (r, r))]);

    internal static readonly PlanWords<int> BuildUpSpans = new(("4 years", 4), ("8 years", 8));

    internal static readonly PlanWords<RecommendationSystem> NutrientSystems = new([
        .. RecommendationSystems.All.Select(s => (s.Id, s)),
    ]);
}
