using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Materials, indices, bases, orders, balances, targets, time and acidity; methods have their own file.</summary>
internal static partial class LimingSums
{
    internal static readonly LimingMaterial Ground = LimingMaterial.FromAnalysis(
        "ground",
        LimingForm.GroundLimestone,
        92,
        SieveAnalysis.FromPercent((4, 100), (8, 98), (10, 95), (20, 80), (30, 70), (40, 62), (50, 56), (60, 50), (100, 38)),
        Percent(4),
        Percent(9));

    private static readonly LimingMaterial[] Materials =
    [
        Ground,
        LimingMaterial.PureCarbonate,
        LimingMaterial.Gypsum,
        LimingMaterial.FromAnalysis("pelletized", LimingForm.Pelletized, 96, SieveAnalysis.FromPercent(
            (4, 100), (8, 100), (10, 100), (20, 100), (30, 100), (40, 99), (50, 98.5), (60, 98), (100, 80))),
        LimingMaterial.FromAnalysis("hydrated", LimingForm.Hydrated, 132),
        LimingMaterial.FromAnalysis("wood ash", LimingForm.WoodAsh, 45, moisture: Percent(20)),
        LimingMaterial.FromLabel("sold by score", LimingForm.GroundLimestone, LimeFigure.FromPercent(LimeIndex.OregonScore, 88)),
        LimingMaterial.FromLabel("sold by pounds to a ton", LimingForm.GroundLimestone, LimeFigure.FromPoundsEqualToOneTon(2200)),
    ];

    internal static void Record(Recorder recorder)
    {
        LimeMethodSums.Record(recorder);
        Compounds(recorder);
        Indices(recorder);
        Bases(recorder);
        Rates(recorder);
        Orders(recorder);
        Balances(recorder);
        Plots(recorder);
        Targets(recorder);
        Time(recorder);
        AcidAndSulfur(recorder);
        Printed(recorder);
    }

    private static LimeRate Rate(double tons, LimeBasis? basis = null, double depth = 6, double target = 6.5,
        string institution = "Oregon") =>
        LimeRate.FromBasis(TonsPerAcre(tons), target, Inches(depth), basis ?? LimeBasis.Find("oregon-score-100"),
            Institution.FindLaboratory(institution));

    private static void Compounds(Recorder recorder)
    {
        foreach (var compound in LimingCompound.All.AddRange(LimingCompound.Unchecked))
        {
            recorder.Add($"liming compound {compound.Id}", "", LimingCompound.Find(compound.Id));
        }

        recorder.Call("liming: carbonate equivalent of calcium and magnesium",
            () => LimingCompound.CcePercentFromElements(Percent(24), Percent(9)));
    }

    private static void Indices(Recorder recorder)
    {
        var sieves = SieveAnalysis.FromFractions((8, Percent(99)), (20, Percent(75)), (60, Percent(41)), (100, Percent(30)));
        foreach (int mesh in new[] { 4, 8, 10, 20, 40, 60, 100, 200 })
        {
            recorder.Call($"liming: what passes mesh {mesh}",
                () => Named(("known", sieves.Knows(mesh)), ("share", sieves.Knows(mesh) ? sieves.SharePassing(mesh) : null)));
        }

        recorder.Call("liming: what passes a mesh that was not run", () => sieves.SharePassing(200));
        recorder.Call("liming: sieves that contradict each other", () => SieveAnalysis.FromPercent((8, 50), (60, 80)));
        foreach (var index in LimeIndex.Everything)
        {
            recorder.Add($"lime index {index.Id}", "", LimeIndex.Find(index.Id));
            recorder.Call($"lime index {index.Id}: fineness of a coarse lime", () => index.FinenessShare(sieves));
            recorder.Call($"lime index {index.Id}: fineness of a ground lime", () => index.FinenessShare(Ground.Sieves!));
            recorder.Call($"lime index {index.Id}: a stated figure", () => LimeFigure.FromValue(index, index.Whole * 0.7));
            foreach (var material in Materials)
            {
                recorder.Call($"lime index {index.Id}: figure of {material.Name}", () => material.FigureIn(index));
                recorder.Call($"lime index {index.Id}: whether {material.Name} has a figure",
                    () => material.TryFigureIn(index, out _, out _));
                recorder.Call($"lime index {index.Id}: power of a ton of {material.Name}",
                    () => NeutralizingPower.In(Pounds(2000), material, index));
                recorder.Call($"lime index {index.Id}: power of two lots of {material.Name}",
                    () =>
                        NeutralizingPower.In(Pounds(2000), material,
                            index).Plus(NeutralizingPower.In(Pounds(400), material, index)));
            }
        }

        foreach (var material in Materials)
        {
            recorder.Call($"liming material {material.Name}", () => material);
            recorder.Call($"liming material {material.Name}: magnesium in a ton", () => material.MagnesiumIn(Pounds(2000)));
            recorder.Call($"liming material {material.Name}: with a stated figure",
                () => material.WithFigure(LimeFigure.FromPoundsPerTon(LimeIndex.Find("ohio-enp"), 1400)).FigureIn(LimeIndex.Find("ohio-enp")));
            foreach (double months in new[] { 0, 1, 3, 6, 12, 24, 40.0 })
            {
                recorder.Call($"liming material {material.Name}: worked after {months} months",
                    () => LimeReaction.After(material, months));
            }
        }

        foreach (var form in Enum.GetValues<LimingForm>())
        {
            recorder.Call($"liming form {Words(form)}", () => LimingMaterial.FromAnalysis("a lime", form, 80));
        }
    }

    private static void Bases(Recorder recorder)
    {
        foreach (var basis in LimeBasis.Everything)
        {
            recorder.Add($"lime basis {basis.Id}", "", LimeBasis.Find(basis.Id));
            recorder.Call($"lime basis {basis.Id}: found or not", () => (LimeBasis.TryFind(basis.Id, out var found, out _) ? found : null));
            recorder.Call($"lime basis {basis.Id}: as a material", () => LimingMaterial.FromBasis(basis));
            foreach (var material in Materials)
            {
                recorder.Call($"lime basis {basis.Id}: 2 ton/ac as {material.Name}", () => Rate(2, basis).RateOf(material));
                recorder.Call($"lime basis {basis.Id}: 2 ton/ac told as pure carbonate through {material.Name}",
                    () => Short(Rate(2, basis).ConvertTo(LimeBasis.Find("pure-carbonate"), material)));
            }

            foreach (var other in LimeBasis.Everything)
            {
                recorder.Call($"lime basis {basis.Id}: 2 ton/ac told as {other.Id}",
                    () => Short(Rate(2, basis).ConvertTo(other)));
                recorder.Call($"lime basis {basis.Id}: 2 ton/ac told as {other.Id} through ground lime",
                    () => Short(Rate(2, basis).ConvertTo(other, Ground)));
            }
        }

        recorder.Call("lime basis: one that is not there", () => (LimeBasis.TryFind("none", out var found, out _) ? found : null));
        recorder.Call("lime bases in daily use", () => new[]
        {
            LimeBasis.Find("ag-lime-nv-90").Id, LimeBasis.Find("georgia-ag-lime").Id, LimeBasis.Find("minnesota-enp").Id,
            LimeBasis.Find("missouri-enm").Id,
            LimeBasis.Find("north-carolina-standard").Id, LimeBasis.Find("ohio-enp").Id, LimeBasis.Find("oregon-score-100").Id, LimeBasis.Find("pure-carbonate").Id,
        });
        recorder.Call("lime indices in daily use", () => new[]
        {
            LimeIndex.CalciumCarbonateEquivalent.Id, LimeIndex.Find("iowa-ecce").Id, LimeIndex.Find("minnesota-enp").Id, LimeIndex.MissouriEnm.Id,
            LimeIndex.Find("new-york-env").Id, LimeIndex.Find("ohio-enp").Id, LimeIndex.OregonScore.Id,
        });
    }

    private static ApplicationRate Short(LimeRateConversion conversion) => conversion.Rate.OfBasis;

    private static void Rates(Recorder recorder)
    {
        recorder.Call("lime rate", () => Rate(2));
        foreach (double depth in new[] { 2.0, 4, 6, 8 })
        {
            recorder.Call($"lime rate for {depth} in", () => Rate(2).AtDepth(Inches(depth)));
        }

        recorder.Call("lime rates added", () => Rate(1).Plus(Rate(2)));
        recorder.Call("lime rates of two bases added", () => Rate(1).Plus(Rate(2, LimeBasis.Find("ohio-enp"))));
        recorder.Call("lime rates by one another", () => Rate(1).RatioTo(Rate(2, target: 6)));
        recorder.Call("lime rate converted, in full", () => Rate(2).ConvertTo(LimeBasis.Find("ohio-enp"), Ground));
        foreach (double tons in new[] { 0.5, 2, 4.0 })
        {
            recorder.Call($"lime of finest grind allowed for {tons} ton/ac", () => FineLimeAllowance.For(Rate(tons)));
        }

        foreach (string institution in LimeMethodSums.Institutions)
        {
            recorder.Call($"lime rounding of {institution}", () => RoundingOf(institution));
            foreach (double tons in new[] { 0.04, 0.3, 1.26, 3.88 })
            {
                recorder.Call($"lime rounding of {institution}: {tons} ton/ac",
                    () => RoundingOf(institution)?.Apply(TonsPerAcre(tons)));
            }

            foreach (double months in new[] { 1.0, 5, 10, 30 })
            {
                foreach (var soil in Enum.GetValues<SoilClass>())
                {
                    recorder.Call($"lime of {months} months ago credited by {institution} on {Words(soil)} soil",
                        () => EarlierLime.FromRate(TonsPerAcre(1.5), months).CreditBy(Institution.Find(institution), soil));
                }
            }
        }

        recorder.Call("lime of earlier", () => EarlierLime.FromRate(TonsPerAcre(1.5), 8));
    }

    private static void Orders(Recorder recorder)
    {
        var report = LimeMethodSums.Sample(SoilClass.Mineral, 5.4, null) with { LimeBufferCapacity = null };
        recorder.Call("lime order: bags, worked in", () => LimeOrder.For(new LimeOrderRequest
        {
            Rate = Rate(2),
            Material = Materials[3],
            Area = Acres(0.62),
            Package = Package.FromWeight(Pounds(40)),
            Price = 6.49m,
        }));
        recorder.Call("lime order: bulk, on top", () => LimeOrder.For(new LimeOrderRequest
        {
            Rate = Rate(3.4),
            Material = Ground,
            Area = Acres(2.5),
            Price = 41.5m,
            Placement = LimePlacement.Surface,
            Soil = report,
            WithUreaOrAmmonium = true,
        }));
        recorder.Call("lime order: several dressings", () => LimeOrder.For(new LimeOrderRequest
        {
            Rate = Rate(5.2),
            Material = Ground,
            Area = Acres(2.5),
            MostAtOnce = TonsPerAcre(2),
            MonthsBetween = 6,
            FirstDressingOn = new DateOnly(2026, 9, 1),
            WorkedDepth = Inches(4),
        }));
        recorder.Call("lime order: lime of earlier and some already spread", () => LimeOrder.For(new LimeOrderRequest
        {
            Rate = Rate(3, institution: "North Carolina", basis: LimeBasis.Find("north-carolina-standard")),
            Material = Materials[^1],
            Area = Acres(1),
            EarlierLime = EarlierLime.FromRate(TonsPerAcre(1), 6),
            AlreadyApplied = [LimeApplication.FromMass(Pounds(600), Materials[^1])],
            Rounding = RoundingOf("North Carolina"),
        }));
        foreach (var material in Materials)
        {
            foreach (var placement in Enum.GetValues<LimePlacement>())
            {
                foreach (var soil in Enum.GetValues<SoilClass>())
                {
                    recorder.Call($"lime order: {material.Name}, {Words(placement)}, {Words(soil)} soil",
                        () => Short(LimeOrder.For(new LimeOrderRequest
                        {
                            Rate = Rate(2.6),
                            Material = material,
                            Area = Acres(0.75),
                            Placement = placement,
                            Soil = PlotSoil.For(new() { Laboratory = "none", SoilClass = soil }),
                        })));
                }
            }
        }

        Offer<LimingMaterial>[] offers = [Offer.InBulk(Ground, 41.5m), Offer.InBags(Materials[3], Pounds(40), 6.49m),
            Offer.InBags(Materials[4], Pounds(50), 13m), Offer.InBulk(Materials[5], 12m)];
        recorder.Call("lime offers by price", () => offers.Select(o => o.PricePerPound));
        recorder.Call("lime offers side by side", () => LimingMaterialComparison.For(Rate(2), Acres(0.62), offers));
        recorder.Call("lime offers side by side, costs",
            () =>
                LimingMaterialComparison.For(Rate(2), Acres(0.62),
                    offers).Costs.Select(c => (c.Offer.Item.Name, c.CostPerEffectiveTon, c.Order?.Cost, c.Order?.Product)));
    }

    private static Dictionary<string, object?> Short(LimeOrder order) => Named(
        ("per basis", order.ProductPerBasis),
        ("exact", order.ExactProductRate),
        ("rate", order.ProductRate),
        ("product", order.Product),
        ("dressings", order.Dressings.Select(d => d.Rate)),
        ("Findings", order.Findings));

    private static void Balances(Recorder recorder)
    {
        LimeApplication[] spread = [LimeApplication.FromMass(Pounds(1500), Ground, new DateOnly(2025, 9, 1)),
            LimeApplication.FromBags(12, Pounds(40), Materials[3])];
        recorder.Call("lime balance: what was spread", () => spread);
        recorder.Call("lime balance", () => LimeBalance.For(Rate(2), Acres(0.75), spread));
        recorder.Call("lime balance with a plan",
            () => LimeBalance.For(Rate(2), Acres(0.75), spread, [LimeApplication.FromBags(60, Pounds(40), Materials[3])]));
        recorder.Call("lime balance: still owed of ground lime",
            () => LimeBalance.For(Rate(2), Acres(0.75), spread).StillOwedOf(Ground));
        recorder.Call("lime balance of no need", () => LimeBalance.For(Rate(0), Acres(0.75), spread));
    }

    private static void Plots(Recorder recorder)
    {
        LimePlotNeed[] plots = [LimePlotNeed.FromRate("north", Acres(0.6), Rate(2)), LimePlotNeed.FromRate("south", Acres(1.1), Rate(0.5)),
            LimePlotNeed.FromRate("untested", Acres(0.3), null)];
        recorder.Call("lime by test against a blanket", () => LimeByTest.Compare(plots[..2], Rate(2), Ground));
        recorder.Call("lime by test against a blanket, one plot without a rate",
            () => LimeByTest.Compare(plots, Rate(2), Ground, new DateOnly(2026, 4, 1)));
    }

    private static void Targets(Recorder recorder)
    {
        recorder.Call("lime target: institutions", () => LimeTarget.Institutions.Select(i => i.Id).Order(StringComparer.Ordinal).ToArray());
        foreach (string institution in LimeTarget.Institutions.Select(i => i.Id))
        {
            foreach (var kind in KindCatalog.Standard.Kinds)
            {
                recorder.Call($"lime target of {institution} for {kind.Id}", () => LimeTarget.For(kind, Institution.Find(institution)).Ph);
            }

            foreach (var soil in Enum.GetValues<SoilClass>())
            {
                foreach (bool acidSubsoil in new[] { false, true })
                {
                    string where = $"{institution}, {Words(soil)} soil{(acidSubsoil ? ", acid subsoil" : "")}";
                    foreach (string kind in new[] { "alfalfa", "crimson", "oats winter", "purple top turnip" })
                    {
                        recorder.Call($"lime target of {where} for {kind}, in full",
                            () => LimeTarget.For(SeedsSums.Kind(kind), Institution.Find(institution), soil, acidSubsoil));
                    }

                    recorder.Call($"lime target of {where} for a blend",
                        () => LimeTarget.ForBlend(Blend, Institution.Find(institution), soil, acidSubsoil));
                }
            }

            recorder.Call($"lime target of {institution} for a blend without its small shares",
                () => LimeTarget.ForBlend(Blend, Institution.Find(institution), smallestShare: 0.3));
        }

        foreach (double margin in new[] { 0, 0.2, 0.5 })
        {
            recorder.Call($"lime trigger {margin} below the target", () => LimeTrigger.Below(6.5, margin));
        }
    }

    private static KindShare[] Blend =>
        [KindShare.FromShare(SeedsSums.Kind("oats winter"), 0.5), KindShare.FromShare(SeedsSums.Kind("crimson"), 0.35),
            KindShare.FromShare(SeedsSums.Kind("alfalfa"), 0.1)];

    private static void Printed(Recorder recorder)
    {
        recorder.Call("printed lime: everything said",
            () => PrintedLimeRate.Read(TonsPerAcre(2), 6.5, Inches(6), LimeBasis.Find("oregon-score-100"), Institution.FindLaboratory("Oregon")));
        recorder.Call("printed lime: no target",
            () => PrintedLimeRate.Read(TonsPerAcre(2), null, Inches(6), LimeBasis.Find("oregon-score-100"), Institution.FindLaboratory("Oregon")));
        recorder.Call("printed lime: nothing said", () => PrintedLimeRate.Read(TonsPerAcre(2), null, null, null, null));
        var sample = LimeMethodSums.Sample(SoilClass.Mineral, 5.4, BufferPh.FromValue(6.2, SoilBuffer.Sikora));
        var need = LimeMethod.Find("oregon-2025-sikora").NeedFor(sample, 6.4);
        foreach (double tons in new[] { 0.5, 2.0, 6 })
        {
            recorder.Call($"printed lime of {tons} ton/ac checked",
                () => Short(PrintedLimeCheck.For(Rate(tons, target: 6.4), need)));
            recorder.Call($"printed lime of {tons} ton/ac of another basis checked through ground lime",
                () => Short(PrintedLimeCheck.For(Rate(tons, LimeBasis.Find("ohio-enp"), target: 6.4), need, Ground)));
        }
    }

    private static Dictionary<string, object?> Short(PrintedLimeCheck check) =>
        Named(("computed", check.Computed), ("differs", check.Differs), ("Findings", check.Findings));

    private static LimeRounding? RoundingOf(string institution) =>
        Institution.Find(institution).LimeRounding;
}
