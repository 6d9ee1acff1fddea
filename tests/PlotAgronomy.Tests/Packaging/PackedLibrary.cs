using System.Globalization;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Packaging;

/// <summary>The library packed once under a version that was never used before, in a folder feed outside the checkout.</summary>
public sealed class PackedLibrary : IDisposable
{
    public PackedLibrary()
    {
        Folder = Directory.CreateTempSubdirectory("plot-agronomy-").FullName;
        Feed = Directory.CreateDirectory(Path.Combine(Folder, "feed")).FullName;
        Version = string.Create(CultureInfo.InvariantCulture, $"0.1.0-test.{DateTime.UtcNow.Ticks}");
        var (code, output) = DotnetCommand.Run(Repository.Root, "pack", "src/PlotAgronomy", "-c", "Release", "-o", Feed, $"-p:Version={Version}", "-p:ContinuousIntegrationBuild=true", $"-p:BaseOutputPath={Folder}/bin/");
        Assert.True(code == 0, output);
        Log = output;
        File.WriteAllText(Path.Combine(Folder, "nuget.config"), $"""
            <configuration>
              <config><add key="globalPackagesFolder" value="{Path.Combine(Folder, "packages")}" /></config>
              <packageSources><add key="local" value="{Feed}" /></packageSources>
              <fallbackPackageFolders><add key="machine" value="{MachinePackages()}" /></fallbackPackageFolders>
            </configuration>
            """);
    }

    public string Folder { get; }

    public string Feed { get; }

    public string Version { get; }

    public string Log { get; }

    public string PackagePath => Path.Combine(Feed, $"PlotAgronomy.{Version}.nupkg");

    public string SymbolsPath => Path.Combine(Feed, $"PlotAgronomy.{Version}.snupkg");

    /// <summary>Lays a console program that references the package and nothing else.</summary>
    public string LayConsumer(string name, string code, string extraProperties = "")
    {
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

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    internal static string MachinePackages() =>
        Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
}
