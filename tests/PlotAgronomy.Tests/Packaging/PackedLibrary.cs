using System.Globalization;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Packaging;

/// <summary>The library packed once under a version that was never used before, in a folder feed outside the checkout; packed
/// when a test first asks for it.</summary>
public sealed class PackedLibrary : IDisposable
{
    private readonly Lazy<string> log;

    public PackedLibrary() => log = new(Pack);

    public string Folder { get; } = Directory.CreateTempSubdirectory("plot-agronomy-").FullName;

    public string Version { get; } = string.Create(CultureInfo.InvariantCulture, $"0.1.0-test.{DateTime.UtcNow.Ticks}");

    public string Log => log.Value;

    public string PackagePath => Packed($"PlotAgronomy.{Version}.nupkg");

    public string SymbolsPath => Packed($"PlotAgronomy.{Version}.snupkg");

    /// <summary>Lays a console program that references the package and nothing else.</summary>
    public string LayConsumer(string name, string code, string extraProperties = "")
    {
        _ = log.Value;
        string folder = Directory.CreateDirectory(Path.Combine(Folder, name)).FullName;
        File.WriteAllText(Path.Combine(folder, "Program.cs"), code);
        File.WriteAllText(Path.Combine(folder, $"{name}.csproj"), $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>net10.0</TargetFramework>
                <ImplicitUsings>enable</ImplicitUsings>
                <Nullable>enable</Nullable>
                {extraProperties}
              </PropertyGroup>
              <ItemGroup><PackageReference Include="PlotAgronomy" Version="{Version}" /></ItemGroup>
            </Project>
            """);
        return folder;
    }

    private string Packed(string file)
    {
        _ = log.Value;
        return Path.Combine(Folder, "feed", file);
    }

    private string Pack()
    {
        string feed = Directory.CreateDirectory(Path.Combine(Folder, "feed")).FullName;
        var (code, output) = DotnetCommand.Run(Repository.Root, "pack", "src/PlotAgronomy", "-c", "Release", "-o", feed, $"-p:Version={Version}", "-p:ContinuousIntegrationBuild=true", $"-p:BaseOutputPath={Folder}/bin/");
        Assert.True(code == 0, output);
        File.WriteAllText(Path.Combine(Folder, "nuget.config"), $"""
            <configuration>
              <config><add key="globalPackagesFolder" value="{Path.Combine(Folder, "packages")}" /></config>
              <packageSources><add key="local" value="{feed}" /></packageSources>
              <fallbackPackageFolders><add key="machine" value="{MachinePackages()}" /></fallbackPackageFolders>
            </configuration>
            """);
        return output;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    internal static string MachinePackages() =>
        Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
}
