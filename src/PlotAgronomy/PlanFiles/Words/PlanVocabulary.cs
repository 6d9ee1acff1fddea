using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.PlanFiles;

/// <summary>The words a plan file may use, and what each stands for.</summary>
internal static class PlanVocabulary
{
    internal static readonly PlanWords<PlantingMethod> PlantingMethods = PlanWords.Hyphened(
        EnumWords<PlantingMethod>.FromNames()
    );

    internal static readonly PlanWords<PlotForm> PlotForms = PlanWords.Hyphened(EnumWords<PlotForm>.FromNames());

    internal static readonly PlanWords<GroundCover> Covers = PlanWords.Hyphened(EnumWords<GroundCover>.FromNames());

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

    internal static readonly PlanWords<SowingMethod> SowingMethods = PlanWords.Hyphened(PlotAgronomy.SowingMethods.Words);

    internal static readonly PlanWords<DrainageClass> Drainages = PlanWords.From(DrainageTolerance.Classes);

    internal static readonly PlanWords<LimingForm> LimingForms = PlanWords.From(LimingWords.Forms);

    internal static readonly PlanWords<YieldUnit> YieldUnits = PlanWords.From(NutrientWords.YieldsPerAcre);

    internal static readonly PlanWords<LegumeCredit> LegumeCredits = new([.. LegumeCredit.Everything.Select(c => (c.Id, c))]);

    internal static readonly PlanWords<FertilizerSubstance> Substances = PlanWords.From(FertilizerWords.Substances);

    internal static readonly PlanWords<LimeMethod> LimeMethods = new([.. LimeMethod.Everything.Select(m => (m.Id, m))]);

    internal static readonly PlanWords<LimeIndex> LimeIndices = new([.. LimeIndex.Everything.Select(i => (i.Id, i))]);

    internal static readonly PlanWords<LimeBasis> LimeBases = new([.. LimeBasis.Everything.Select(b => (b.Id, b))]);

    internal static readonly PlanWords<SoilRegion> Regions = new([.. SoilRegion.All.Select(r => (r.Name, r))]);

    internal static readonly PlanWords<Place> Places = new([.. Place.All.Select(p => (p.Name, p))]);

    internal static readonly PlanWords<PlantingRegion> PlantingRegions = new([.. PlantingRegion.All.Select(r => (r.Name, r))]);

    internal static readonly PlanWords<SampleMoisture> SampleStates = PlanWords.From(SoilWords.SampleStates);

    internal static readonly PlanWords<SoilSupply> Supplies = PlanWords.From(SoilWords.Supplies);

    internal static readonly PlanWords<SoilSupply> CapacityGroups = PlanWords.From(SoilWords.Supplies, SoilSupply.Medium);

    internal static readonly PlanWords<string> PhosphorusRatings = new([.. SouthCarolinaSystem.Ratings.Select(r => (r, r))]);

    internal static readonly PlanWords<int> BuildUpSpans = new(("4 years", 4), ("8 years", 8));

    internal static readonly PlanWords<RecommendationSystem> NutrientSystems = new([
        .. RecommendationSystems.Everything.Select(s => (s.Id, s)),
    ]);
}
