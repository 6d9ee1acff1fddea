using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Columns;

/// <summary>A row of a table of soil tests while its cells are read.</summary>
internal sealed class ReportDraft
{
    private readonly List<SoilReading> readings = [];
    private readonly List<BufferPh> buffers = [];

    internal string Sample { get; set; } = "";

    internal string Crop { get; set; } = "";

    internal WaterPh? WaterPh { get; set; }

    internal SaltPh? SaltPh { get; set; }

    internal CationCharge? ExchangeCapacity { get; set; }

    internal CationCharge? Acidity { get; set; }

    internal Fraction? OrganicMatter { get; set; }

    internal Fraction? HumicMatter { get; set; }

    internal Density? WeightPerVolume { get; set; }

    internal Length? Depth { get; set; }

    internal SoilClass? Class { get; set; }

    internal SoilTexture? Texture { get; set; }

    internal void Add(SoilReading reading) => readings.Add(reading);

    internal void Add(BufferPh reading) => buffers.Add(reading);

    internal SoilReport Finish(string? laboratory) =>
        new()
        {
            Laboratory = laboratory ?? SoilReport.UnnamedLaboratory,
            Readings = [.. readings],
            BufferPhs = [.. buffers],
            WaterPh = WaterPh,
            SaltPh = SaltPh,
            PrintedExchangeCapacity = ExchangeCapacity,
            ExchangeableAcidity = Acidity,
            OrganicMatter = OrganicMatter,
            HumicMatter = HumicMatter,
            WeightPerVolume = WeightPerVolume,
            SampledDepth = Depth,
            SoilClass = Class,
            Texture = Texture,
        };
}
