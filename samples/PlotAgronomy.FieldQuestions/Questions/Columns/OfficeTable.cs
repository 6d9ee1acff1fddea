using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Plots;
using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Columns;

/// <summary>Two offices send tables that look unlike; one list of lime and needs is to come out, for the database of the
/// county.</summary>
internal static class OfficeTable
{
    private const string Wooster = """
        No;crop;class;texture;depth in;pH;pH salt;SMP;OM %;K ppm;CEC
        W-1;corn;mineral;silt loam;7;5,8;5,2;6,6;2,4;96;11,5
        W-2;corn;mineral;clay loam;7;6,3;6,9;6,8;3,1;142;16,0
        W-3;food strip;mineral;loam;3;5,6;5,1;66;2,0;71;9,8
        """;

    private const string Coast = """
        lab,ph,acid,hm,wv,P-I,K-I
        C-1,5.2,1.9,0.4,1.31,22,41
        C-2,5.0,2.6,3.1,1.02,<5,33
        """;

    internal static void Answer(TextWriter output)
    {
        var ohio = LaboratoryProfile.For(
            Institution.Find("Tri-State"), LimeMethod.Find("tri-state-1995-smp"), RecommendationSystem.Find("TS-2020"));
        var inland = ReportTable.Read(Wooster, "inland",
            ReportColumn.Sample("No"), ReportColumn.Crop("crop"), ReportColumn.SoilClass("class"),
            ReportColumn.Texture("texture"), ReportColumn.Depth("depth in"), ReportColumn.WaterPh("pH"),
            ReportColumn.SaltPh("pH salt"), ohio.BufferPh("SMP"),
            ReportColumn.OrganicMatter("OM %"), ohio.Potassium("K ppm"), ReportColumn.ExchangeCapacity("CEC"));
        var carolina = LaboratoryProfile.For(Institution.NorthCarolina);
        var coast = ReportTable.Read(Coast, "coast",
            ReportColumn.Sample("lab"), ReportColumn.WaterPh("ph"),
            ReportColumn.ExchangeableAcidity("acid", CationChargeBasis.Per100CubicCentimeters), ReportColumn.HumicMatter("hm"),
            ReportColumn.WeightPerVolume("wv"), carolina.Phosphorus("P-I"), carolina.Potassium("K-I"));
        foreach (var problem in inland.Problems)
        {
            output.WriteLine($"Inland, {problem}");
        }

        var words = new Dictionary<string, CropRow> { ["food strip"] = CropRow.Corn };
        var all = ReportAnswers.Join(
            ReportAnswers.For(inland, ohio.Ask(targetPh: 6.5) with { CropWords = words }),
            ReportAnswers.For(coast, carolina.Ask(targetPh: 6.0, CropRow.DeerTurkeyPlot)));
        output.WriteLine(all);
        output.Write(all.ToCsv());
        double[] organic = [.. inland.Numbers(r => r.OrganicMatter?.Percent).Where(double.IsFinite)];
        output.WriteLine($"Inland the soils hold {Amounts.Print(organic.Average(), 1)} % organic matter on average.");
        output.Warn(all.Rows.SelectMany(r => r.Findings).DistinctBy(f => f.Code));
    }
}
